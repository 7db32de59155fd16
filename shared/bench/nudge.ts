// Nudging: how far one press of an arrow key carries a piece.
import { POINTS_PER, type Unit } from '../units/length.ts';

/** One press in the unit the person reads: a hundredth of an inch, a quarter of a millimetre, a point. */
const STEPS: Readonly<Record<Unit, number>> = { in: 0.01, mm: 0.25, pt: 1 };

/** One press in pt; a large one is ten times as far. */
export function nudgeStep(unit: Unit, large: boolean): number {
  return STEPS[unit] * POINTS_PER[unit] * (large ? 10 : 1);
}
