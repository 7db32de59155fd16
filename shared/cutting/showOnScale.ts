// A length as it is read from the scale of a back gauge: inches in fractions as a rule shows them.
import { POINTS_PER, type Unit } from '../units/length.ts';
import { showLength } from '../units/show.ts';

/** The finest division of a rule, in an inch. */
const FINEST_PARTS_PER_INCH = 64;
/** How near to a division a length in inches must be to be read from it: a thousandth, the last figure shown else. */
const SAME_LENGTH_IN = 0.0005;

/** `10 3/8 in` where a rule has that division, else as any length: `10.4 in`, `263.53 mm`. */
export function showOnScale(pt: number, unit: Unit): string {
  const inches = pt / POINTS_PER.in;
  const divisions = Math.round(inches * FINEST_PARTS_PER_INCH);
  if (unit !== 'in' || Math.abs(inches - divisions / FINEST_PARTS_PER_INCH) > SAME_LENGTH_IN)
    return showLength(pt, unit);
  const whole = Math.floor(divisions / FINEST_PARTS_PER_INCH);
  let [over, under] = [divisions % FINEST_PARTS_PER_INCH, FINEST_PARTS_PER_INCH];
  if (over === 0) return `${whole} in`;
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${whole === 0 ? '' : `${whole} `}${over}/${under} in`;
}
