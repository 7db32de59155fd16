// Edits of what the customer wants: quantities, overs, how a piece is turned, which way up its art stands.
import { ok, type Result, refuse } from '../fault/result.ts';
import { headOf, type ReaderTurn } from '../geometry/head.ts';
import type { Overs } from '../layout/count.ts';
import type { FaceName } from '../layout/position.ts';
import type { Piece } from './brief.ts';
import type { BriefCommand } from './commands.ts';
import type { FoundArt, Job } from './job.ts';
import { leadersOf, mirrorOf, partnerIndex } from './partners.ts';
import { refused } from './refused.ts';

export function editBrief(job: Job, command: BriefCommand): Result<Job> {
  switch (command.do) {
    case 'retitle':
      return retitle(job, command.title.trim());
    case 'set-quantity':
      return setQuantity(job, command.piece, command.quantity);
    case 'set-overs':
      return setOvers(job, command.overs);
    case 'turn-art':
      return turnArt(job, command);
    case 'set-reader-turn':
      return setReaderTurn(job, command.piece, command.turned);
  }
}

function retitle(job: Job, title: string): Result<Job> {
  if (title === '') return refuse(refused('A job needs a title.'));
  return ok({ ...job, brief: { ...job.brief, title } });
}

function setQuantity(job: Job, name: string, quantity: number): Result<Job> {
  if (!Number.isInteger(quantity) || quantity < 1) {
    return refuse(refused(`${quantity} is not a quantity: it must be a whole number of at least 1.`));
  }
  return changePiece(job, name, (piece) => ok({ ...piece, quantity }));
}

function setOvers(job: Job, overs: Overs): Result<Job> {
  const { percent, least } = overs;
  const fits = Number.isFinite(percent) && percent >= 0 && Number.isInteger(least) && least >= 0;
  if (!fits) {
    return refuse(refused('Overs are a share of the run and a whole number of sheets, neither negative.'));
  }
  return ok({ ...job, brief: { ...job.brief, overs } });
}

function turnArt(job: Job, command: Extract<BriefCommand, { do: 'turn-art' }>): Result<Job> {
  const turned = changePiece(job, command.piece, (piece) => turnFace(piece, command.face));
  if (!turned.ok) return turned;
  const isTurned = (a: FoundArt) => a.piece === command.piece && a.face === command.face;
  const { trim, said } = command.found;
  return ok({ ...turned.value, art: job.art.map((a) => (isTurned(a) ? { ...a, trim, said } : a)) });
}

function turnFace(piece: Piece, name: FaceName): Result<Piece> {
  const face = piece[name];
  if (face === undefined) return refuse(refused(`"${piece.name}" has no ${name}.`));
  if (face.trimAt !== undefined) {
    return refuse(
      refused(
        `The trim of the ${name} of "${piece.name}" was placed by hand on the page as it stands.`,
        'Take the art in again, turned, and say where its trim lies.',
      ),
    );
  }
  return ok({ ...piece, [name]: { ...face, rotate: headOf(face.rotate + 180) } });
}

/** Where one form serves both sides, the partner of each position turns its head with the new way of reading. */
function setReaderTurn(job: Job, name: string, turned: ReaderTurn): Result<Job> {
  const changed = changePiece(job, name, (piece) => ok({ ...piece, turned }));
  if (!changed.ok) return changed;
  const own = job.arrangement.flatMap((p, i) => (p.piece === name ? [i] : []));
  const arrangement = [...job.arrangement];
  for (const index of leadersOf(job, own)) {
    const position = job.arrangement[index];
    const partner = position && partnerIndex(job, position);
    const mirror = position && mirrorOf(changed.value, position);
    if (partner !== undefined && mirror !== undefined) arrangement[partner] = mirror;
  }
  return ok({ ...changed.value, arrangement });
}

function changePiece(job: Job, name: string, change: (piece: Piece) => Result<Piece>): Result<Job> {
  const index = job.brief.pieces.findIndex((p) => p.name === name);
  const piece = job.brief.pieces[index];
  if (piece === undefined) return refuse(refused(`The job has no piece "${name}".`));
  const changed = change(piece);
  if (!changed.ok) return changed;
  return ok({ ...job, brief: { ...job.brief, pieces: job.brief.pieces.with(index, changed.value) } });
}
