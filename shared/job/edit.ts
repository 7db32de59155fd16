// Doing an edit: a job and a command give a new job, or a refusal that leaves the old one as it was.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { headOf } from '../geometry/head.ts';
import { centre, holds, shift, wholeOf } from '../geometry/rect.ts';
import { hasOneForm, turnOf } from '../geometry/work.ts';
import { designNamed } from '../layout/forms.ts';
import { coincide, partnerOf } from '../layout/partner.ts';
import { otherFace, type Position } from '../layout/position.ts';
import type { Command } from './commands.ts';
import { designsOf, type Job, sheetOf } from './job.ts';
import { layOutJob } from './layOutJob.ts';

/** The job after the edit. In a one-form style the partner of every changed position follows as its mirror. */
export function edit(job: Job, command: Command): Result<Job> {
  switch (command.do) {
    case 'move':
      return change(job, command.positions, (p) => ({ ...p, trim: shift(p.trim, command.dx, command.dy) }));
    case 'turn-heads':
      return change(job, command.positions, (p) => turnHead(p, command.quarters));
    case 'swap-faces':
      return change(job, command.positions, (p) => ({ ...p, face: otherFace(p.face) }));
    case 'duplicate':
      return duplicate(job, command.positions, command.dx, command.dy);
    case 'remove':
      return remove(job, command.positions);
    case 'lay-out':
      return layOutJob(job);
    case 'retitle': {
      const title = command.title.trim();
      return title === ''
        ? refuse(refused('A job needs a title.'))
        : ok({ ...job, brief: { ...job.brief, title } });
    }
    case 'set-quantity':
      return setQuantity(job, command.piece, command.quantity);
    case 'set-overs': {
      const { percent, least } = command.overs;
      const fits = Number.isFinite(percent) && percent >= 0 && Number.isInteger(least) && least >= 0;
      if (!fits)
        return refuse(
          refused('Overs are a share of the run and a whole number of sheets, neither negative.'),
        );
      return ok({ ...job, brief: { ...job.brief, overs: command.overs } });
    }
  }
}

/** Changes the positions, and lets their partners follow where one form serves both sides. */
function change(job: Job, positions: readonly number[], one: (p: Position) => Position): Result<Job> {
  const chosen = choose(job, positions);
  if (!chosen.ok) return chosen;
  const arrangement = [...job.arrangement];
  const settled = new Set<number>();
  for (const index of chosen.value) {
    const before = job.arrangement[index];
    if (before === undefined || settled.has(index)) continue;
    const after = one(before);
    arrangement[index] = after;
    settled.add(index);
    const partner = partnerIndex(job, before);
    if (partner !== undefined && partner !== index) {
      arrangement[partner] = mirrorOf(job, after);
      settled.add(partner);
    }
  }
  return onSheet({ ...job, arrangement });
}

function duplicate(job: Job, positions: readonly number[], dx: number, dy: number): Result<Job> {
  const chosen = choose(job, positions);
  if (!chosen.ok) return chosen;
  const copies: Position[] = [];
  const settled = new Set<number>();
  for (const index of chosen.value) {
    const original = job.arrangement[index];
    if (original === undefined || settled.has(index)) continue;
    const copy = { ...original, trim: shift(original.trim, dx, dy) };
    const partner = partnerIndex(job, original);
    copies.push(copy);
    if (partner !== undefined) {
      copies.push(mirrorOf(job, copy));
      settled.add(partner);
    }
  }
  return onSheet({ ...job, arrangement: [...job.arrangement, ...copies] });
}

function remove(job: Job, positions: readonly number[]): Result<Job> {
  const chosen = choose(job, positions);
  if (!chosen.ok) return chosen;
  const gone = new Set(chosen.value);
  for (const index of chosen.value) {
    const position = job.arrangement[index];
    const partner = position && partnerIndex(job, position);
    if (partner !== undefined) gone.add(partner);
  }
  return ok({ ...job, arrangement: job.arrangement.filter((_p, i) => !gone.has(i)) });
}

function setQuantity(job: Job, name: string, quantity: number): Result<Job> {
  if (!Number.isInteger(quantity) || quantity < 1) {
    return refuse(refused(`${quantity} is not a quantity: it must be a whole number of at least 1.`));
  }
  if (!job.brief.pieces.some((p) => p.name === name))
    return refuse(refused(`The job has no piece "${name}".`));
  const pieces = job.brief.pieces.map((p) => (p.name === name ? { ...p, quantity } : p));
  return ok({ ...job, brief: { ...job.brief, pieces } });
}

/** A piece turned by quarter turns counter-clockwise about its own middle. */
function turnHead(position: Position, quarters: number): Position {
  const { trim } = position;
  const middle = centre(trim);
  const size = quarters % 2 === 0 ? { w: trim.w, h: trim.h } : { w: trim.h, h: trim.w };
  return {
    ...position,
    head: headOf(position.head + 90 * quarters),
    trim: { x: middle.x - size.w / 2, y: middle.y - size.h / 2, ...size },
  };
}

/** Where the partner of a position stands in the arrangement, in a one-form style. */
function partnerIndex(job: Job, position: Position): number | undefined {
  if (!hasOneForm(job.brief.work)) return undefined;
  const mirror = mirrorOf(job, position);
  const index = job.arrangement.findIndex((p) => coincide(p, mirror));
  return index < 0 ? undefined : index;
}

function mirrorOf(job: Job, position: Position): Position {
  const turn = turnOf(job.brief.work);
  if (turn === undefined) throw new Error('A sheet that is not turned has no partners');
  const design = designNamed(designsOf(job.brief), position.piece);
  return partnerOf(position, design.turned, turn, sheetOf(job.brief).size);
}

function choose(job: Job, positions: readonly number[]): Result<readonly number[]> {
  const stranger = positions.find((i) => job.arrangement[i] === undefined);
  if (positions.length === 0) return refuse(refused('No piece is chosen.'));
  return stranger === undefined
    ? ok([...new Set(positions)])
    : refuse(refused(`There is no position ${stranger + 1} on this sheet.`));
}

function onSheet(job: Job): Result<Job> {
  const whole = wholeOf<'side1'>(sheetOf(job.brief).size);
  const stray = job.arrangement.findIndex((p) => !holds(whole, p.trim));
  return stray < 0 ? ok(job) : refuse(refused(`Position ${stray + 1} would run off the sheet.`));
}

function refused(message: string): Fault {
  return { code: 'edit-refused', message, remedy: 'Nothing has been changed; try it another way.' };
}
