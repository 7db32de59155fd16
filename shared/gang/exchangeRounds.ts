// Exchanging copies on several numbers of forms in rounds: shortly on all of them, then longer and longer on the best.
import { exchangeCopies } from './exchange.ts';
import type { GangForm, GangOrder } from './gang.ts';
import type { IsOver } from './isOver.ts';

type Copies = readonly Pick<GangForm, 'copies'>[];

/** What rounds of exchanging work with. */
export interface Rounds {
  /** Numbers of forms to try. */
  readonly counts: readonly number[];
  /** Rounds that find nothing better before it is given up. */
  readonly patience: number;
  readonly chance: () => number;
  readonly isOver: IsOver;
  /** Whether so many forms may yet cost less than the best plan. */
  readonly mayDo: (count: number) => boolean;
  /** Takes the copies that a number of forms came to, and says what they cost and whether that is the best so far. */
  readonly take: (forms: Copies) => { readonly cost: number; readonly better: boolean };
}

/** Steps for every place of all forms in the first round, and how many times more in each that follows. */
const STEPS_PER_PLACE = 500;
const LONG_ROUND_FACTOR = 4;
/** The cheapest number of forms is gone on with, and those below it: fewer forms take longer to come out well. */
const FORM_COUNTS_CONTINUED = 3;

/** Exchanges copies round after round, beginning with these forms. */
export function exchangeInRounds(order: GangOrder, begun: readonly GangForm[], rounds: Rounds): void {
  const { counts, patience, chance, isOver, mayDo, take } = rounds;
  const latest = counts.map((count) => ({
    forms: withCount(begun, count, order),
    cost: Number.POSITIVE_INFINITY,
  }));
  let tried = latest;
  for (
    let idle = 0, stepsAPlace = STEPS_PER_PLACE;
    idle < patience;
    idle++, stepsAPlace *= LONG_ROUND_FACTOR
  ) {
    for (const one of tried) {
      if (isOver()) return;
      const count = one.forms.length;
      if (!mayDo(count)) continue;
      const steps = stepsAPlace * count * order.slots;
      one.forms = exchangeCopies(order, one.forms, { steps, chance, isOver });
      const { cost, better } = take(one.forms);
      one.cost = cost;
      if (better) idle = -1;
    }
    const cheapest = latest.reduce((least, one) => (one.cost < least.cost ? one : least), NONE).forms.length;
    tried = latest
      .filter(({ forms }) => forms.length <= cheapest && forms.length > cheapest - FORM_COUNTS_CONTINUED)
      .toReversed();
  }
}

const NONE: { readonly forms: Copies; readonly cost: number } = {
  forms: [],
  cost: Number.POSITIVE_INFINITY,
};

/** So many forms: the shortest runs left out, or forms added that wait to be filled. */
function withCount(forms: readonly GangForm[], count: number, { quantities, slots }: GangOrder): Copies {
  const kept: Pick<GangForm, 'copies'>[] = forms.slice(0, count);
  const largest = quantities.indexOf(Math.max(...quantities));
  while (kept.length < count) {
    kept.push({ copies: quantities.map((_, design) => (design === largest ? slots : 0)) });
  }
  return kept;
}
