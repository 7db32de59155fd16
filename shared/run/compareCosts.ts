// What a run really cost against its plan, part by part, and where each difference comes from.
import type { CostParts } from '../plan/candidate.ts';
import { sheetsOf } from './events.ts';
import { impressionsOf, measuredOf, sheetsUsed } from './impressions.ts';
import type { PlannedRun } from './planned.ts';
import type { PrintRun } from './run.ts';

/** The parts of a cost, in the order in which they are compared. */
const PARTS = ['paper', 'ink', 'labour', 'makeReady', 'trimming', 'wear'] as const;

type ComparedPart = (typeof PARTS)[number];

/** In the plan's currency, to a hundredth. `actual - planned` is just the sum of the reasons. */
export interface PartDifference {
  readonly part: ComparedPart;
  readonly planned: number;
  readonly actual: number;
  readonly because: readonly DifferenceReason[];
  /** Whether it was counted or measured, or reckoned from how often sheets went through the printer. */
  readonly known: 'counted' | 'measured' | 'reckoned';
}

interface DifferenceReason {
  readonly says: string;
  readonly amount: number;
}

interface CostComparison {
  readonly currency: string;
  readonly parts: readonly PartDifference[];
  readonly planned: number;
  readonly actual: number;
}

/**
 * The comparison of a run that was begun with a plan; nothing for another. Paper is counted. Ink and labour are those that
 * were measured; where nothing was measured, they are reckoned to grow with the passes. Make-ready comes first out of
 * the minutes that were measured. Trimming is not counted by itself: it is taken as planned.
 */
export function compareCosts(run: PrintRun): CostComparison | undefined {
  const { planned } = run.plan;
  if (planned === undefined) return undefined;
  const parts = PARTS.map((part) => inMoney(part, compare[part](run, planned)));
  const sum = (of: 'planned' | 'actual') => parts.reduce((all, p) => all + Math.round(p[of] * 100), 0) / 100;
  return { currency: planned.currency, parts, planned: sum('planned'), actual: sum('actual') };
}

/** In cents. */
interface InCents {
  readonly planned: number;
  readonly because: readonly DifferenceReason[];
  readonly known: PartDifference['known'];
}

const compare: Readonly<Record<ComparedPart, (run: PrintRun, planned: PlannedRun) => InCents>> = {
  paper: (run, planned) => {
    const used = sheetsUsed(run);
    return grown(planned.cost, 'paper', used / planned.sheets, 'counted', [
      `${sheetsOf(used)} used instead of ${planned.sheets}`,
    ]);
  },
  ink: (run, planned) => {
    const by = passesInWords(run, planned);
    const { ink } = measuredOf(run);
    if (ink === undefined) return grown(planned.cost, 'ink', by.ratio, 'reckoned', [by.says]);
    const due = planned.ink * by.ratio;
    const measured = `${shown(ink)} ml measured where ${shown(due)} ml were to be expected`;
    return grown(planned.cost, 'ink', by.ratio, 'measured', [by.says, measured], ratioOf(ink, planned.ink));
  },
  labour: (run, planned) => {
    const by = passesInWords(run, planned);
    const { minutes } = measuredOf(run);
    if (minutes === undefined) return grown(planned.cost, 'labour', by.ratio, 'reckoned', [by.says]);
    const { atPrinter, makeReady } = planned.minutes;
    const stood = Math.max(0, minutes - makeReady);
    const measured = `${shown(stood)} minutes at the printer where ${shown(atPrinter * by.ratio)} were to be expected`;
    const at = (stood / 60) * planned.labourPerHour * 100;
    return withReasons(cents(planned.cost.labour), by, measured, Math.round(at));
  },
  makeReady: (run, planned) => {
    const { minutes } = measuredOf(run);
    const { makeReady } = planned.minutes;
    const before = cents(planned.cost.makeReady);
    if (minutes === undefined || minutes >= makeReady) {
      return { planned: before, because: [], known: minutes === undefined ? 'reckoned' : 'measured' };
    }
    const amount = Math.round(before * (minutes / makeReady)) - before;
    return {
      planned: before,
      because: [{ says: `all was done in ${shown(minutes)} minutes`, amount }],
      known: 'measured',
    };
  },
  trimming: (_, planned) => ({ planned: cents(planned.cost.trimming), because: [], known: 'reckoned' }),
  wear: (run, planned) => {
    const by = passesInWords(run, planned);
    return grown(planned.cost, 'wear', by.ratio, 'counted', [by.says]);
  },
};

interface ByPasses {
  /** Passes of sheets through the printer, against the plan. */
  readonly ratio: number;
  readonly says: string;
}

function passesInWords(run: PrintRun, planned: PlannedRun): ByPasses {
  const [actual, reckoned] = [impressionsOf(run), planned.sheets * planned.passes];
  return { ratio: actual / reckoned, says: `${actual} times through the printer instead of ${reckoned}` };
}

/** A part that grew by `ratio`, and further to `wholly` times the plan for a second reason. */
function grown(
  cost: CostParts,
  part: ComparedPart,
  ratio: number,
  known: InCents['known'],
  says: readonly [string, string?],
  wholly: number = ratio,
): InCents {
  const planned = cents(cost[part]);
  const byCount = Math.round(planned * ratio);
  const [first, second = ''] = says;
  const because = [
    { says: first, amount: byCount - planned },
    { says: second, amount: Math.round(planned * wholly) - byCount },
  ];
  return { planned, because, known };
}

function withReasons(planned: number, by: ByPasses, measured: string, actual: number): InCents {
  const byCount = Math.round(planned * by.ratio);
  const because = [
    { says: by.says, amount: byCount - planned },
    { says: measured, amount: actual - byCount },
  ];
  return { planned, because, known: 'measured' };
}

function inMoney(part: ComparedPart, { planned, because, known }: InCents): PartDifference {
  const actual = because.reduce((sum, { amount }) => sum + amount, planned);
  return {
    part,
    planned: planned / 100,
    actual: actual / 100,
    because: because
      .filter(({ amount }) => amount !== 0)
      .map(({ says, amount }) => ({ says, amount: amount / 100 })),
    known,
  };
}

const cents = (amount: number) => Math.round(amount * 100);
const ratioOf = (actual: number, planned: number) => (planned === 0 ? 1 : actual / planned);
const shown = (amount: number) => String(Math.round(amount * 10) / 10);
