// Making a gang run better by exchanging copies between its forms, again and again, as metal settles while it cools.
import type { GangForm, GangOrder } from './gang.ts';
import type { IsOver } from './isOver.ts';
import { leastRunsFor } from './runLengths.ts';

/** How long it is gone on at most, and where chance comes from: a function that gives numbers from 0 to below 1. */
export interface Exchanging {
  readonly steps: number;
  readonly chance: () => number;
  readonly isOver: IsOver;
}

/** The clock is looked at every so many steps. */
const STEPS_A_LOOK = 32;

/** Worse by this share of the sheets is taken as often as not at the beginning, and hardly at all at the end. */
const WARM = 0.1;
const COLD = 0.00001;

/**
 * Forms of the same number whose copies need fewer sheets, or the same ones. At every step one place is given to another
 * design, or two places of two forms change theirs; what needs more sheets is sometimes taken, less and less often.
 *
 * @source simulated annealing, as the literature on this question uses it (Romero and Alonso-Pecina); from memory.
 */
export function exchangeCopies(
  { quantities, slots }: GangOrder,
  forms: readonly Pick<GangForm, 'copies'>[],
  { steps, chance, isOver }: Exchanging,
): readonly Pick<GangForm, 'copies'>[] {
  const designs = quantities.length;
  const count = forms.length;
  /** Which design lies in each place, -1 for none, form by form. */
  const places = new Int32Array(count * slots).fill(-1);
  const copies = new Int32Array(count * designs);
  forms.forEach((form, f) => {
    let at = f * slots;
    form.copies.forEach((number, design) => {
      copies[f * designs + design] = number;
      for (let k = 0; k < number; k++) places[at++] = design;
    });
  });
  const leastRuns = leastRunsFor(quantities, count);
  const put = (place: number, design: number) => {
    const form = Math.floor(place / slots) * designs;
    const old = places[place] ?? -1;
    if (old >= 0) copies[form + old] = (copies[form + old] ?? 0) - 1;
    if (design >= 0) copies[form + design] = (copies[form + design] ?? 0) + 1;
    places[place] = design;
  };
  const draw = (below: number) => Math.floor(chance() * below);

  let now = leastRuns(copies);
  let best = now;
  let kept = copies.slice();
  const first = WARM * now;
  const cooling = (COLD / WARM) ** (1 / steps);
  let warmth = first;
  for (let step = 0; step < steps; step++, warmth *= cooling) {
    if (step % STEPS_A_LOOK === 0 && isOver()) break;
    const one = draw(places.length);
    const other = draw(places.length);
    const mine = places[one] ?? -1;
    const theirs = places[other] ?? -1;
    const exchange = count > 1 && chance() < 0.5;
    if (exchange) {
      put(one, theirs);
      put(other, mine);
    } else put(one, draw(designs));
    const then = leastRuns(copies);
    if (then <= now || chance() < Math.exp((now - then) / warmth)) {
      now = then;
      if (now < best) {
        best = now;
        kept = copies.slice();
      }
    } else {
      put(one, mine);
      if (exchange) put(other, theirs);
    }
  }
  return forms.map((_, f) => ({ copies: [...kept.subarray(f * designs, (f + 1) * designs)] }));
}
