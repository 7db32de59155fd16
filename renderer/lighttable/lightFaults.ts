// What the light table finds wrong between the two sides, in words, each with what could mend it.
import { type Backed, backUp } from '../../shared/bench/backUp.ts';
import { standsOnItsHead } from '../../shared/bench/typeStands.ts';
import type { Head } from '../../shared/geometry/head.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { designsOf, facesOf, type Job, sheetOf } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';

/** What is known of the type on the pages of the art: which way its head is, for a face of a piece. */
export type TypeHeads = (piece: string, face: FaceName) => Head | undefined;

export interface LightFault {
  readonly key: string;
  /** Whether it is certain; what only looks wrong is asked. */
  readonly certain: boolean;
  readonly message: string;
  /** The positions it concerns. */
  readonly positions: readonly number[];
  readonly mends: readonly Mend[];
}

/** What would mend a fault. */
export type Mend =
  | { readonly do: 'turn-art'; readonly piece: string; readonly face: FaceName }
  | { readonly do: 'show-on-bench'; readonly positions: readonly number[] };

/** What lies behind each piece as the sheet is laid out; nothing where it is printed on one side. */
export function backsOf(job: Job): readonly Backed[] {
  const turn = turnOf(job.brief.work);
  if (turn === undefined) return [];
  const sheet = { ...sheetOf(job.brief), work: job.brief.work };
  return backUp(job.arrangement, designsOf(job.brief), sheet, turn, job.brief.units);
}

export function lightFaults(
  job: Job,
  backed: readonly Backed[],
  typeHeads: TypeHeads,
): readonly LightFault[] {
  return [...backed.flatMap(faultBehind), ...typeFaults(job, typeHeads)];
}

function faultBehind({ position, fault, message }: Backed): readonly LightFault[] {
  if (fault === undefined) return [];
  const positions = [position];
  return [
    {
      key: `${fault} ${position}`,
      certain: true,
      message,
      positions,
      mends: [{ do: 'show-on-bench', positions }],
    },
  ];
}

/** Faces whose type stands on its head, though the brief says that the head of their page is up. */
function typeFaults(job: Job, typeHeads: TypeHeads): readonly LightFault[] {
  return facesOf(job.brief).flatMap(({ piece, name, face }) => {
    if (!standsOnItsHead(typeHeads(piece.name, name), face.rotate)) return [];
    const positions = job.arrangement.flatMap((p, i) => (p.piece === piece.name ? [i] : []));
    const read = piece.turned === 'head-to-head' ? 'like a page' : 'like a wall calendar';
    const message =
      name === 'front'
        ? `The type on the front of "${piece.name}" stands on its head.`
        : `The type on the back of "${piece.name}" stands on its head when the piece is turned ${read}.`;
    const mends: readonly Mend[] = [{ do: 'turn-art', piece: piece.name, face: name }];
    return [{ key: `type ${name} ${piece.name}`, certain: false, message, positions, mends }];
  });
}

/** What a mend is called. */
export function nameOfMend(mend: Mend): string {
  switch (mend.do) {
    case 'turn-art':
      return `Turn the art of the ${mend.face}`;
    case 'show-on-bench':
      return 'Show it on the bench';
  }
}
