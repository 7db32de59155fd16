// Partners in a job: in a one-form style each position and the one behind it are edited as one.
import { hasOneForm, turnOf } from '../geometry/work.ts';
import { designNamed } from '../layout/forms.ts';
import { coincide, partnerOf } from '../layout/partner.ts';
import type { Position } from '../layout/position.ts';
import { designsOf, type Job, sheetOf } from './job.ts';

/** Where the partner of a position has to lie on the one form, or `undefined` where there are two forms or one side. */
export function mirrorOf(job: Job, position: Position): Position | undefined {
  const turn = turnOf(job.brief.work);
  if (turn === undefined || !hasOneForm(job.brief.work)) return undefined;
  const design = designNamed(designsOf(job.brief), position.piece);
  return partnerOf(position, design.turned, turn, sheetOf(job.brief).size);
}

/** The index of the partner of a position, or `undefined` where it has none. */
export function partnerIndex(job: Job, position: Position): number | undefined {
  const mirror = mirrorOf(job, position);
  if (mirror === undefined) return undefined;
  const index = job.arrangement.findIndex((p) => coincide(p, mirror));
  return index < 0 ? undefined : index;
}

/** The chosen positions without those whose partner was named before them: they follow. */
export function leadersOf(job: Job, positions: readonly number[]): readonly number[] {
  const followers = new Set<number>();
  return [...new Set(positions)].filter((index) => {
    const position = job.arrangement[index];
    if (position === undefined || followers.has(index)) return false;
    const partner = partnerIndex(job, position);
    if (partner !== undefined) followers.add(partner);
    return true;
  });
}
