// Edits of where the pieces lie. In a one-form style the partner of every changed position follows as its mirror.
import { type Alignment, align, distribute, type PieceShift } from '../bench/align.ts';
import { type Repeat, repeat } from '../bench/repeat.ts';
import { ok, type Result, refuse } from '../fault/result.ts';
import { lying } from '../geometry/head.ts';
import { around, grow, holds, overlap, shift, wholeOf } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { designNamed } from '../layout/forms.ts';
import { otherFace, type Position } from '../layout/position.ts';
import type { ArrangementCommand } from './commands.ts';
import { designsOf, type Job, sheetOf, trimOf, usableOf } from './job.ts';
import { layOutJob } from './layOutJob.ts';
import { leadersOf, mirrorOf, partnerIndex } from './partners.ts';
import { refused } from './refused.ts';
import { turnHead } from './turnHead.ts';

/** The job with its positions changed; refused where a piece would leave the sheet, or where none is chosen. */
export function editArrangement(job: Job, command: ArrangementCommand): Result<Job> {
  if (command.do === 'lay-out') return layOutJob(job);
  if (command.do === 'add') return add(job, command);
  const chosen = choose(job, command.do === 'place' ? [command.position] : command.positions);
  if (!chosen.ok) return chosen;
  const leaders = leadersOf(job, chosen.value);
  switch (command.do) {
    case 'move':
      return change(job, leaders, (p) => moved(p, command));
    case 'place':
      return change(job, leaders, (p) => ({ ...p, trim: { ...p.trim, x: command.x, y: command.y } }));
    case 'turn-heads':
      return turnHeads(job, leaders, command.quarters);
    case 'swap-faces':
      return change(job, leaders, (p) => ({ ...p, face: otherFace(p.face) }));
    case 'duplicate':
      return copy(job, leaders, [command]);
    case 'remove':
      return ok(remove(job, leaders));
    case 'align':
      return shiftEach(job, leaders, shiftsInLine(job, leaders, command.by, command.to));
    case 'distribute':
      return shiftEach(job, leaders, distribute(trimsOf(job, leaders), command.axis, command.gap));
    case 'repeat':
      return repeatLeaders(job, leaders, command.repeat);
  }
}

/** Changes the leaders and lets their partners follow. */
function change(
  job: Job,
  leaders: readonly number[],
  one: (position: Position, nth: number) => Position,
): Result<Job> {
  const arrangement = [...job.arrangement];
  leaders.forEach((index, nth) => {
    const before = job.arrangement[index];
    if (before === undefined) return;
    const after = one(before, nth);
    arrangement[index] = after;
    const partner = partnerIndex(job, before);
    const mirror = mirrorOf(job, after);
    if (partner !== undefined && mirror !== undefined) arrangement[partner] = mirror;
  });
  return onSheet({ ...job, arrangement });
}

function turnHeads(job: Job, leaders: readonly number[], quarters: number): Result<Job> {
  const turned = change(job, leaders, (p) => turnHead(job, p, quarters));
  if (!turned.ok) return turned;
  const over = leaders.find((i) => liesOverPartner(turned.value, i) && !liesOverPartner(job, i));
  return over === undefined
    ? turned
    : refuse(
        refused(`Position ${over + 1} would lie over its own partner: half the sheet is too small for it.`),
      );
}

function liesOverPartner(job: Job, index: number): boolean {
  const position = job.arrangement[index];
  const partner = position && partnerIndex(job, position);
  const other = partner === undefined ? undefined : job.arrangement[partner];
  return position !== undefined && other !== undefined && overlap(position.trim, other.trim);
}

function shiftEach(job: Job, leaders: readonly number[], shifts: readonly PieceShift[]): Result<Job> {
  return change(job, leaders, (p, nth) => moved(p, shifts[nth] ?? { dx: 0, dy: 0 }));
}

/** Adds a copy of every leader for every shift, each with a partner of its own where the leader has one. */
function copy(job: Job, leaders: readonly number[], shifts: readonly PieceShift[]): Result<Job> {
  const copies = shifts.flatMap((by) =>
    leaders.flatMap((index) => {
      const original = job.arrangement[index];
      if (original === undefined) return [];
      const one = moved(original, by);
      return partnerIndex(job, original) === undefined ? [one] : withPartner(job, one);
    }),
  );
  return onSheet({ ...job, arrangement: [...job.arrangement, ...copies] });
}

function repeatLeaders(job: Job, leaders: readonly number[], how: Repeat): Result<Job> {
  const { across, along } = how;
  if (!Number.isInteger(across) || !Number.isInteger(along) || across < 1 || along < 1) {
    return refuse(
      refused('How often a piece is repeated is a whole number of at least 1 in each direction.'),
    );
  }
  return copy(job, leaders, repeat(around(trimsOf(job, leaders)) ?? { w: 0, h: 0 }, how));
}

function add(job: Job, command: Extract<ArrangementCommand, { do: 'add' }>): Result<Job> {
  const piece = job.brief.pieces.find((p) => p.name === command.piece);
  if (piece === undefined) return refuse(refused(`The job has no piece "${command.piece}".`));
  const { face, head, x, y } = command;
  const one = { piece: piece.name, face, head, trim: { x, y, ...lying(trimOf(piece), head) } };
  return onSheet({ ...job, arrangement: [...job.arrangement, ...withPartner(job, one)] });
}

function withPartner(job: Job, position: Position): readonly Position[] {
  const mirror = mirrorOf(job, position);
  return mirror === undefined ? [position] : [position, mirror];
}

function remove(job: Job, leaders: readonly number[]): Job {
  const gone = new Set(leaders);
  for (const index of leaders) {
    const position = job.arrangement[index];
    const partner = position && partnerIndex(job, position);
    if (partner !== undefined) gone.add(partner);
  }
  return { ...job, arrangement: job.arrangement.filter((_p, i) => !gone.has(i)) };
}

function shiftsInLine(
  job: Job,
  leaders: readonly number[],
  by: Alignment,
  to: 'one-another' | 'sheet',
): readonly PieceShift[] {
  if (to === 'one-another') return align(trimsOf(job, leaders), by);
  const whole = wholeOf<'side1'>(sheetOf(job.brief).size);
  const usable = usableOf(job.brief) ?? whole;
  const toMiddle = by === 'middle-across' || by === 'middle-along';
  return leaders.flatMap((index) => {
    const position = job.arrangement[index];
    if (position === undefined) return [];
    const { bleed } = designNamed(designsOf(job.brief), position.piece);
    return align([position.trim], by, toMiddle ? whole : grow(usable, -bleed));
  });
}

function trimsOf(job: Job, indexes: readonly number[]): readonly Rect<'side1'>[] {
  return indexes.flatMap((i) => job.arrangement[i]?.trim ?? []);
}

function moved(position: Position, by: PieceShift): Position {
  return { ...position, trim: shift(position.trim, by.dx, by.dy) };
}

function choose(job: Job, positions: readonly number[]): Result<readonly number[]> {
  const stranger = positions.find((i) => job.arrangement[i] === undefined);
  if (positions.length === 0) return refuse(refused('No piece is selected.'));
  return stranger === undefined
    ? ok(positions)
    : refuse(refused(`There is no position ${stranger + 1} on this sheet.`));
}

function onSheet(job: Job): Result<Job> {
  const whole = wholeOf<'side1'>(sheetOf(job.brief).size);
  const stray = job.arrangement.findIndex((p) => !holds(whole, p.trim));
  return stray < 0 ? ok(job) : refuse(refused(`Position ${stray + 1} would run off the sheet.`));
}
