// The guillotine: what it takes, what it can hold and how high a pile it cuts.
import { POINTS_PER } from '../units/length.ts';

const MM = POINTS_PER.mm;

/** On which hand of the person at the table a side guide stands. */
export type Hand = 'left' | 'right';

/** A guillotine cutter. All lengths in pt. */
export interface Cutter {
  readonly name: string;
  /** The longest edge that lies along the knife. */
  readonly widest: number;
  /** How far the back gauge goes back from the knife. */
  readonly deepest: number;
  /** How near the back gauge comes to the knife: what is shorter behind the knife is not under the clamp. */
  readonly leastGauge: number;
  /** How high a pile goes under the clamp. */
  readonly opening: number;
  /** How high a pile is cut at once so that its lowest sheet is as true as its top one; never more than `opening`. */
  readonly mostStack: number;
  /** The hands on which it has a side guide, the one that is used first at the front. */
  readonly guides: readonly [Hand, ...Hand[]];
}

/**
 * A guillotine of no make, such as stands in a small studio: read its own manual for the real figures.
 *
 * @source from memory: the usual size of a small powered guillotine
 */
export const ANY_CUTTER: Cutter = {
  name: 'Guillotine',
  widest: 520 * MM,
  deepest: 520 * MM,
  leastGauge: 35 * MM,
  opening: 80 * MM,
  mostStack: 50 * MM,
  guides: ['left', 'right'],
};
