// Making a gang run better by exchanging copies between its forms, again and again, as metal settles while it cools.
import type { GangForm, GangOrder } from './gang.ts';
import type { IsOver } from './isOver.ts';
import { type CopyChange, createRunLengths } from './runLengths.ts';

/** How long it is gone on at most, and where chance comes from: a function that gives numbers from 0 to below 1. */
export interface Exchanging {
  readonly steps: number;
  readonly chance: () => number;
  readonly isOver: IsOver;
}

/** The clock is looked at every so many steps. */
const STEPS_BETWEEN_CLOCK_LOOKS = 32;

/** Worse by this share of the sheets is taken more often than not at the beginning, and hardly at all at the end. */
const START_TEMPERATURE = 0.03;
const END_TEMPERATURE = 0.0003;

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
  const places = layPlaces(forms, slots);
  const copiesInAll = quantities.map((_, design) => places.filter((there) => there === design).length);
  const runs = createRunLengths(quantities, forms.length);
  const draw = (below: number) => Math.floor(chance() * below);

  let now = runs.least(Int32Array.from(forms.flatMap(({ copies }) => copies)));
  runs.keep();
  let best = now;
  let bestPlaces = places.slice();
  let warmth = START_TEMPERATURE * now;
  const cooling = (END_TEMPERATURE / START_TEMPERATURE) ** (1 / steps);
  for (let step = 0; step < steps; step++, warmth *= cooling) {
    if (step % STEPS_BETWEEN_CLOCK_LOOKS === 0 && isOver()) break;
    const exchange = forms.length > 1 && chance() < 0.5;
    const one = draw(places.length);
    const mine = places[one] ?? -1;
    const form = Math.floor(one / slots);
    const other = exchange ? draw(places.length) : -1;
    const theirs = exchange ? (places[other] ?? -1) : draw(quantities.length);
    const otherForm = exchange ? Math.floor(other / slots) : -1;
    const same = mine === theirs || form === otherForm;
    // A design's last copy is never given away, only exchanged.
    if (same || (!exchange && copiesInAll[mine] === 1)) continue;

    const changes: CopyChange[] = [];
    if (mine >= 0) changes.push({ form, design: mine, by: -1 });
    if (theirs >= 0) changes.push({ form, design: theirs, by: 1 });
    if (exchange && mine >= 0) changes.push({ form: otherForm, design: mine, by: 1 });
    if (exchange && theirs >= 0) changes.push({ form: otherForm, design: theirs, by: -1 });
    const most = now - warmth * Math.log(1 - chance());
    const then = runs.leastAfter(changes, most);
    if (then > most) {
      runs.undo();
      continue;
    }
    runs.keep();
    now = then;
    places[one] = theirs;
    if (exchange) places[other] = mine;
    for (const { design, by } of changes) copiesInAll[design] = (copiesInAll[design] ?? 0) + by;
    if (now < best) {
      best = now;
      bestPlaces = places.slice();
    }
  }
  return forms.map((_, f) => {
    const here = bestPlaces.subarray(f * slots, (f + 1) * slots);
    return { copies: quantities.map((__, design) => here.filter((there) => there === design).length) };
  });
}

/** Which design lies in each place, -1 for none, form by form. */
function layPlaces(forms: readonly Pick<GangForm, 'copies'>[], slots: number): Int32Array {
  const places = new Int32Array(forms.length * slots).fill(-1);
  forms.forEach(({ copies }, f) => {
    let at = f * slots;
    copies.forEach((number, design) => {
      places.fill(design, at, at + number);
      at += number;
    });
  });
  return places;
}
