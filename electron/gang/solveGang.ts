// Planning a gang run: a quick plan first, then better ones, until the best is proven or the time is over.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { formsWorthTrying, gapOf, leastCost, leastForms, mostForms } from '../../shared/gang/bounds.ts';
import { chanceFrom } from '../../shared/gang/chance.ts';
import { exchangeInRounds } from '../../shared/gang/exchangeRounds.ts';
import { fewerNearBy, fewestOnForms } from '../../shared/gang/fewForms.ts';
import { fillingsOf, fillingsProgram, readFillings } from '../../shared/gang/fillingsProgram.ts';
import { type GangForm, type GangOrder, type GangPlan, weighGang } from '../../shared/gang/gang.ts';
import {
  lengthsProgram,
  lengthsWorthTrying,
  readLengths,
  writeLengths,
} from '../../shared/gang/lengthsProgram.ts';
import { readRuns, runsProgram } from '../../shared/gang/runsProgram.ts';
import { settleForms } from '../../shared/gang/settleForms.ts';
import { startGang } from '../../shared/gang/startGang.ts';
import { openSolver } from './solveProgram.ts';

/** A plan, and what is known of how good it is. */
export interface GangAnswer {
  readonly plan: GangPlan;
  /** What no plan can cost less than. */
  readonly bound: number;
  /** How far the plan may be from the best, as a share of its cost; 0 where it is proven the best. */
  readonly gap: number;
}

/** How long it may take, and who is told of every better plan. */
export interface GangEffort {
  readonly seconds: number;
  readonly onBetter?: (answer: GangAnswer) => void;
  /** The time in ms, from any beginning; that of this machine where none is given. */
  readonly now?: () => number;
}

/** By which share of the time each step is done at the latest; the solver has what is left. */
const LOOKED_THROUGH_BY = 0.45;
const EXCHANGED_BY = 0.8;
const LOOKED_NEAR_BY = 0.9;
/** So often nothing better is found before it is given up; before the solver decides, which proves more. */
const PATIENCE = 4;
const PATIENCE_BEFORE_DECIDING = 1;
/** Numbers of forms that are looked through exactly. */
const FEW: readonly number[] = [1, 2, 3];
/** Steps of looking through all that a few forms can do, for each second allowed. */
const WORK_A_SECOND = 4e7;
/** So many ways to fill a form are put to the solver all at once. */
const MOST_FILLINGS = 500;
/** Rounding the runs of a plan to whole sheets takes no time worth counting, so it is let end. */
const ROUNDING_SECONDS = 0.2;
/** Whole numbers of a program over given lengths that is solved in a few seconds. */
const MOST_WHOLE = 400;

/**
 * Plans a gang run. Holds its thread until it is done; the same order gives the same plan as long as the time is enough.
 *
 * Refuses (`gang-impossible`) an order whose forms have fewer places than there are designs.
 */
export async function solveGang(order: GangOrder, effort: GangEffort): Promise<Result<GangAnswer>> {
  const start = startGang(order);
  if (start === undefined) return refuse(tooFewPlaces(order));
  const now = effort.now ?? (() => performance.now());
  const begun = now();
  /** Seconds until a share of the time is over; never below 0. */
  const leftUntil = (share: number) => Math.max(0, effort.seconds * share - (now() - begun) / 1000);
  const left = () => leftUntil(1);
  const overBy = (share: number) => () => leftUntil(share) === 0;
  const work = WORK_A_SECOND * effort.seconds;
  const solve = await openSolver();
  const chance = chanceFrom(order.quantities.length);
  const proven = new Map<number, number>();
  let plan = weighGang(order, settleForms(order, start.forms));
  let bound = leastCost(order, proven);
  const answer = () => ({ plan, bound, gap: gapOf(plan.cost, bound) });
  /** Takes forms if they are better, and says whether they were. */
  const take = (forms: readonly GangForm[]): boolean => {
    const weighed = weighGang(order, settleForms(order, forms));
    if (gapOf(plan.cost, weighed.cost) === 0) return false;
    plan = weighed;
    effort.onBetter?.(answer());
    return true;
  };
  const prove = (least: number) => {
    bound = Math.max(bound, Math.min(least, plan.cost));
  };
  effort.onBetter?.(answer());

  /** Looks through all that so many forms can do, as long as that is worth it and not too long. */
  const lookThrough = (count: number) => {
    if (!formsWorthTrying(order, proven, plan.cost).includes(count)) return;
    const enough = startGang({ ...order, mostForms: count })?.sheets ?? 0;
    const { least, forms } = fewestOnForms(order, count, enough, {
      work,
      isOver: overBy(LOOKED_THROUGH_BY),
    });
    proven.set(count, least);
    if (forms !== undefined) take(forms);
    prove(leastCost(order, proven));
  };

  /** The fewest whole sheets for the copies of these forms. */
  const run = (forms: readonly Pick<GangForm, 'copies'>[]): readonly GangForm[] | undefined => {
    const solved = solve(runsProgram(order, forms), { seconds: Math.max(ROUNDING_SECONDS, left()) });
    return solved.values && readRuns(forms, solved.values);
  };

  const exchange = (patience: number) => {
    exchangeInRounds(order, plan.forms, {
      counts: formsWorthTrying(order, proven, plan.cost),
      patience,
      chance,
      isOver: overBy(EXCHANGED_BY),
      mayDo: (count) => formsWorthTrying(order, proven, plan.cost).includes(count),
      take: (copies) => {
        const forms = run(copies);
        if (forms === undefined) return { cost: Number.POSITIVE_INFINITY, better: false };
        return { cost: weighGang(order, forms).cost, better: take(forms) };
      },
    });
  };

  /** Every way to fill a form, put to the solver at once. */
  const decide = (fillings: readonly (readonly number[])[]) => {
    const counts = formsWorthTrying(order, proven, plan.cost);
    const [least] = counts;
    const most = counts.at(-1);
    if (least === undefined || most === undefined) return;
    const program = fillingsProgram(order, fillings, { least, most }, plan.cost * (1 - 1e-6));
    const solved = solve(program, { seconds: left() });
    if (solved.values !== undefined) {
      const better = run(readFillings(fillings, solved.values));
      if (better !== undefined) take(better);
    }
    if (solved.values !== undefined || !solved.proven) prove(solved.bound);
    else prove(plan.cost);
  };

  /** Runs of other lengths, a few at a time, put to the solver. */
  const polish = () => {
    for (let idle = 0; idle < PATIENCE && left() > 0.5 && answer().gap > 0; idle++) {
      const runs = new Set(plan.forms.map((form) => form.sheets));
      const others = lengthsWorthTrying(order, plan.forms).slice(runs.size);
      const some = Math.ceil(MOST_WHOLE / order.quantities.length);
      const lengths = [...runs, ...drawSome(others, some, chance)];
      const start = writeLengths(order, lengths, plan.forms);
      const solved = solve(lengthsProgram(order, lengths), { seconds: Math.min(3, left()), start });
      const better = solved.values && run(readLengths(order, lengths, solved.values));
      if (better !== undefined && take(better)) idle = -1;
    }
  };

  for (const count of FEW) lookThrough(count);
  const fillings = fillingsOf(order, MOST_FILLINGS);
  if (answer().gap > 0) exchange(fillings === undefined ? PATIENCE : PATIENCE_BEFORE_DECIDING);
  if (answer().gap > 0 && FEW.includes(plan.forms.length)) {
    take(fewerNearBy(order, plan.forms, { work, isOver: overBy(LOOKED_NEAR_BY) }));
  }
  if (answer().gap > 0 && left() > 0) {
    if (fillings !== undefined) decide(fillings);
    else polish();
  }
  return ok(answer());
}

function drawSome<T>(from: readonly T[], count: number, chance: () => number): readonly T[] {
  const rest = [...from];
  const drawn: T[] = [];
  while (drawn.length < count && rest.length > 0) {
    drawn.push(...rest.splice(Math.floor(chance() * rest.length), 1));
  }
  return drawn;
}

function tooFewPlaces(order: GangOrder): Fault {
  const { quantities, slots } = order;
  return {
    code: 'gang-impossible',
    message: `${quantities.length} designs need ${leastForms(order)} forms of ${slots} places at least; ${mostForms(order)} are allowed.`,
    remedy: 'Allow more forms, or take a larger sheet.',
  };
}
