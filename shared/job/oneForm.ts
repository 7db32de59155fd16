// Whether one form can serve both sides of a job's sheet, and if not, why.
import { hasOneForm, turnOf, type Work } from '../geometry/work.ts';
import { registerDirection } from '../layout/centring.ts';
import type { Brief } from './brief.ts';
import type { FieldFault } from './lengthReader.ts';

/** Everything in the brief that stands against its one-form style; nothing for the styles that have two forms or one side. */
export function oneFormFaults(brief: Brief): readonly FieldFault[] {
  const turn = turnOf(brief.work);
  if (!hasOneForm(brief.work) || turn === undefined) return [];
  const direction = registerDirection(turn);
  const { style } = brief.work;
  const faults: FieldFault[] = [];
  if (!brief.sheet.sidesAlike) {
    faults.push({
      field: 'work',
      says: `${style} prints one form on both sides, so every piece may come out on either side of the paper, and the two sides of this paper are not alike; take work-and-back`,
    });
  }
  if (brief.centring[direction] !== 'centre') {
    faults.push({
      field: `centring.${direction}`,
      says: `${style} needs equal margins ${direction} the feed, so the block must lie in the centre there`,
    });
  }
  brief.pieces.forEach((piece, i) => {
    if (piece.back === undefined) {
      faults.push({
        field: `pieces[${i}].back`,
        says: `${style} prints fronts and backs from one form, and "${piece.name}" has no back; take simplex or work-and-back`,
      });
    }
  });
  return faults;
}

/** The brief worked in another way. Where one form then needs equal margins, the block comes to lie in the centre. */
export function withWork(brief: Brief, work: Work): Brief {
  const turn = turnOf(work);
  if (!hasOneForm(work) || turn === undefined) return { ...brief, work };
  return { ...brief, work, centring: { ...brief.centring, [registerDirection(turn)]: 'centre' } };
}
