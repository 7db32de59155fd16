// A gang run on two or three forms, exactly: every way to divide the sheets between them is looked at.
import { leastSheets } from './bounds.ts';
import { type GangForm, type GangOrder, sum } from './gang.ts';
import type { IsOver } from './isOver.ts';
import { priceWays } from './placePrices.ts';
import { type CopiesOnForms, waysToMake } from './waysToMake.ts';

/** How long is looked: about so many steps, and no longer than the time allows. */
export interface SearchLimit {
  readonly work: number;
  readonly isOver: IsOver;
}

/** What is known of a number of forms. */
export interface FewestSheets {
  /** No fewer sheets do; infinite where no number does. */
  readonly least: number;
  /** The best that was found. Where its sheets are as few as `least`, no others need fewer. */
  readonly forms?: readonly GangForm[];
}

/**
 * The forms, `count` or fewer of them, that make the order with the fewest sheets. `enough` sheets are known to do;
 * looking ends after about `work` steps or when the time is over, and what is known by then is the answer.
 *
 * For a number of sheets all divisions between the forms are tried. Prices of places rule most of them out. Of what is
 * left, all that matters of the designs looked at so far is how few places of the last form are taken for so many of the
 * others. More sheets never make it harder, so the least number is found by halving.
 */
export function fewestOnForms(
  order: GangOrder,
  count: number,
  enough: number,
  effort: SearchLimit,
): FewestSheets {
  if (order.quantities.length > count * order.slots) return { least: Number.POSITIVE_INFINITY };
  const filler = createFiller(order, count, effort);
  let tooFew = leastSheets(order, count) - 1;
  let most = enough + 1;
  let forms: readonly GangForm[] | undefined;
  while (most - tooFew > 1) {
    const between = forms === undefined ? enough : Math.floor((tooFew + most) / 2);
    const divided = filler.divide(between);
    if (divided === 'too-long') break;
    if (divided === 'cannot') tooFew = between;
    else {
      most = between;
      forms = divided;
    }
  }
  return forms === undefined ? { least: tooFew + 1 } : { least: tooFew + 1, forms };
}

/**
 * Forms with fewer sheets, looked for among divisions like the one of these forms: one sheet less at a time, until none is
 * found near by, about `work` steps are done or the time is over. At least the forms that were given.
 */
export function fewerNearBy(
  order: GangOrder,
  forms: readonly GangForm[],
  effort: SearchLimit,
): readonly GangForm[] {
  const filler = createFiller(order, forms.length, effort);
  let best = forms;
  for (;;) {
    // A form that was emptied on the way may be needed again.
    const found = filler.divideLike(forms.map((_, form) => best[form]?.sheets ?? 0));
    if (found === undefined) return best;
    best = found;
  }
}

/** Smaller forms are filled as quickly as their places are priced. */
const MIN_STATES_FOR_PRICING = 64;

function createFiller({ quantities, slots }: GangOrder, count: number, { work, isOver }: SearchLimit) {
  const span = slots + 1;
  const states = span ** (count - 1);
  const free = slots + 1;
  const taken = [new Uint16Array(states), new Uint16Array(states)] as const;
  const choices = quantities.map(() => new Uint16Array(states));
  /** Designs by their number wanted: what is wanted alike is made in the same ways. */
  const alike = new Map<number, number>();
  for (const wanted of quantities) alike.set(wanted, (alike.get(wanted) ?? 0) + 1);
  let steps = 0;
  /** Whether a way was given up half looked at, so that not finding one proves nothing. */
  let cutOff = false;

  /** All forms but the last as a number: their places taken, one digit for each form. */
  const numberOf = (way: CopiesOnForms) =>
    way.slice(0, -1).reduce((number, copies) => number * span + copies, 0);
  const fits = (state: number, way: CopiesOnForms) => {
    let rest = state;
    for (let form = count - 2; form >= 0; form--) {
      if ((rest % span) + (way[form] ?? 0) > slots) return false;
      rest = Math.floor(rest / span);
    }
    return true;
  };

  /** The copies of every design on every form for these runs, or `undefined` where they do not fit. */
  const fill = (runs: readonly number[]): readonly CopiesOnForms[] | undefined => {
    cutOff ||= isOver();
    if (cutOff) return undefined;
    const waysOf = new Map([...alike.keys()].map((wanted) => [wanted, waysToMake(wanted, runs, slots)]));
    if (states >= MIN_STATES_FOR_PRICING) {
      const choices = [...alike].map(([wanted, designs]) => ({ ways: waysOf.get(wanted) ?? [], designs }));
      const priced = priceWays(choices, slots, runs);
      steps += priced.steps;
      if (priced.lacking) return undefined;
    }
    const ways = quantities.map((wanted) => waysOf.get(wanted) ?? []);
    let [now, next] = taken;
    now.fill(free);
    now[0] = 0;
    for (const [design, choice] of choices.entries()) {
      cutOff ||= isOver();
      if (cutOff) return undefined;
      next.fill(free);
      let any = false;
      ways[design]?.forEach((way, number) => {
        const last = way[count - 1] ?? 0;
        const offset = numberOf(way);
        for (let state = 0; state + offset < states; state++) {
          const all = (now[state] ?? free) + last;
          if (all >= (next[state + offset] ?? free) || !fits(state, way)) continue;
          next[state + offset] = all;
          choice[state + offset] = number;
          any = true;
        }
        steps += states - offset;
      });
      if (!any) return undefined;
      [now, next] = [next, now];
    }
    let state = now.findIndex((last) => last < free);
    return quantities
      .map((_, i) => {
        const design = quantities.length - 1 - i;
        const way = ways[design]?.[choices[design]?.[state] ?? 0] ?? [];
        state -= numberOf(way);
        return way;
      })
      .reverse();
  };

  /** Whether the designs could have places enough if every run were as long as the longest. */
  const hopeful = (longest: number) =>
    sum(quantities.map((wanted) => Math.ceil(wanted / longest))) <= count * slots;

  const formsFor = (runs: readonly number[]): readonly GangForm[] | undefined => {
    const ways = fill(runs);
    return (
      ways &&
      runs
        .map((run, form) => ({ copies: ways.map((way) => way[form] ?? 0), sheets: run }))
        .filter((form) => form.sheets > 0 && sum(form.copies) > 0)
    );
  };

  return {
    divide(sheets: number): readonly GangForm[] | 'cannot' | 'too-long' {
      if (countDivisions(sheets, count) * quantities.length > work) return 'too-long';
      for (let longest = sheets; longest * count >= sheets && hopeful(longest); longest--) {
        for (const others of divisions(sheets - longest, count - 1, longest)) {
          if (steps > work) return 'too-long';
          const forms = formsFor([longest, ...others]);
          if (forms !== undefined) return forms;
          if (cutOff) return 'too-long';
        }
      }
      return 'cannot';
    },

    /** One sheet less than these runs have, divided much as they are: nearest first. */
    divideLike(runs: readonly number[]): readonly GangForm[] | undefined {
      const sheets = sum(runs) - 1;
      for (let reach = 1; reach <= MAX_SEARCH_DISTANCE; reach++) {
        for (const moved of movedBy(runs.slice(0, -1), reach)) {
          const last = sheets - sum(moved);
          if (last < 0 || moved.some((run) => run < 0)) continue;
          if (steps > work || cutOff) return undefined;
          const forms = formsFor([...moved, last].toSorted((a, b) => b - a));
          if (forms !== undefined) return forms;
        }
      }
      return undefined;
    },
  };
}

/** About how many ways there are to divide so many sheets into runs: 1 for one form, a half for two, a twelfth for three. */
function countDivisions(sheets: number, count: number): number {
  let ways = 1;
  for (let form = 2; form <= count; form++) ways *= sheets / (form * (form - 1));
  return ways;
}

/** Runs are moved by so many sheets at most. */
const MAX_SEARCH_DISTANCE = 12;

/** The runs, each moved by up to `reach` sheets, at least one of them by just that. */
function* movedBy(runs: readonly number[], reach: number, free = false): Generator<readonly number[]> {
  const [run, ...others] = runs;
  if (run === undefined) {
    if (free) yield [];
    return;
  }
  for (let by = -reach; by <= reach; by++) {
    const farthest = free || Math.abs(by) === reach;
    for (const rest of movedBy(others, reach, farthest)) yield [run + by, ...rest];
  }
}

/** Every way to divide so many sheets into runs, each no longer than the one before. */
function* divisions(sheets: number, count: number, longest: number): Generator<readonly number[]> {
  if (count <= 1) {
    if (count === 1 ? sheets <= longest : sheets === 0) yield count === 1 ? [sheets] : [];
    return;
  }
  for (let first = Math.min(sheets, longest); first * count >= sheets; first--) {
    for (const rest of divisions(sheets - first, count - 1, first)) yield [first, ...rest];
  }
}
