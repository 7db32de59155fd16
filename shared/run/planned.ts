// What was reckoned with when a run began: its sheets, ink, time and cost, kept with it whatever prices do later.
import type { InkedArea } from '../ink/inkModel.ts';
import type { Library } from '../library/library.ts';
import type { CostParts, Coverage, PlanCandidate } from '../plan/candidate.ts';

export interface PlannedRun {
  readonly printer: string;
  readonly feed: string;
  readonly paper: string;
  readonly quality: string;
  /** What stands before amounts of money. */
  readonly currency: string;
  readonly labourPerHour: number;
  /** To be loaded. */
  readonly sheets: number;
  /** Of these, spoiled with setting up. */
  readonly makeReadySheets: number;
  readonly passes: 1 | 2;
  /** What is printed on one sheet, both sides together. */
  readonly inked: InkedArea;
  /** For the whole run, in ml. */
  readonly ink: number;
  /** What a person is reckoned to spend, in minutes. */
  readonly minutes: {
    readonly makeReady: number;
    /** Feeding, turning, and standing by where somebody has to. */
    readonly atPrinter: number;
    /** Of those at the printer, what hands do: loading, aligning, turning. */
    readonly hands: number;
  };
  readonly cost: CostParts;
}

/** What a candidate with its price sets a run to do. `library`: the one it was priced with. */
export function plannedRun(candidate: PlanCandidate, library: Library, coverage: Coverage): PlannedRun {
  const { printer, feed, paper, quality, count, passes, printed, ink, time, cost } = candidate;
  const area = printed.reduce((sum, face) => sum + face.area, 0);
  const inked = printed.reduce((sum, face) => sum + face.area * coverage(face.piece, face.face), 0);
  return {
    printer: printer.name,
    feed: feed.name,
    paper: paper.name,
    quality,
    currency: library.currency,
    labourPerHour: library.rates.labourPerHour,
    sheets: count.sheets,
    makeReadySheets: count.makeReady,
    passes,
    inked: { area, coverage: area === 0 ? 0 : inked / area },
    ink: ink.ml,
    minutes: {
      makeReady: time.makeReady / 60,
      atPrinter: (time.attended - time.makeReady - time.cutting) / 60,
      hands: time.handling / 60,
    },
    cost,
  };
}
