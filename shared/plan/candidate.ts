// A candidate of the plan: one way to print a job, with its counts, its times and all parts of its cost.
import type { Fault } from '../fault/result.ts';
import type { Size } from '../geometry/space.ts';
import type { Work } from '../geometry/work.ts';
import type { InkAmount } from '../ink/inkModel.ts';
import type { Overs, SheetCount } from '../layout/count.ts';
import type { Lies } from '../layout/lies.ts';
import type { FaceName, Position } from '../layout/position.ts';
import type { Feed, Paper, Printer, StockForm } from '../library/library.ts';
import type { Length } from '../units/length.ts';

/** A way to print the job as far as its layout goes: nothing in it depends on prices or quantities alone. */
export interface LaidCandidate {
  /** Unlike that of any other candidate of the same brief and library, and the same each time. */
  readonly id: string;
  readonly printer: Printer;
  readonly feed: Feed;
  readonly paper: Paper;
  readonly source: SheetSource;
  /** Across the feed, along it, as typed. */
  readonly sheet: readonly [Length, Length];
  /** The same in pt. */
  readonly size: Size;
  /** Which edge of the sheet leads; a square sheet counts as led by its short edge. */
  readonly lead: 'short' | 'long';
  /** Where the grain runs on the sheet as it is fed. */
  readonly grain: 'along-feed' | 'across-feed' | 'mixed' | 'unknown';
  readonly work: Work;
  /** How pieces lie that may lie either way. */
  readonly lies: Lies;
  readonly arrangement: readonly Position[];
  /** Pieces that one sheet yields, of all designs together. */
  readonly up: number;
  /** The same for each design, in the order of the brief; every one at least 1. */
  readonly perSheet: readonly number[];
  /** Sides that are printed. */
  readonly sides: 1 | 2;
  /** Times that a person lays the sheets in. */
  readonly passes: 1 | 2;
  /** Forms that are set up one after the other. */
  readonly setUps: 1 | 2;
  /** What is printed on both sides of one sheet, bleeds included, by face; areas in m2. */
  readonly printed: readonly PrintedFace[];
  /** Cuts through a pile that free all pieces. */
  readonly cuts: number;
  /** What the person should know of the layout, in words. */
  readonly notices: readonly string[];
}

/** Where the sheets come from: how many of them out of one parent, or how much of the roll each takes. */
export type SheetSource =
  | { readonly is: 'sheet'; readonly form: Extract<StockForm, { is: 'sheet' }> }
  | {
      readonly is: 'parent';
      readonly form: Extract<StockForm, { is: 'parent' }>;
      readonly out: number;
      /** Cuts through a pile of parents. */
      readonly cuts: number;
    }
  | {
      readonly is: 'roll';
      readonly form: Extract<StockForm, { is: 'roll' }>;
      /** What each sheet takes of the roll, in m. */
      readonly metres: number;
    };

/** All of one face on a sheet. */
export interface PrintedFace {
  readonly piece: string;
  readonly face: FaceName;
  /** In m2. */
  readonly area: number;
}

/** A candidate with its price. */
export interface PlanCandidate extends LaidCandidate {
  readonly quality: string;
  readonly count: PlanCount;
  readonly area: PlanArea;
  readonly time: PlanTime;
  /** For the whole run. */
  readonly ink: InkAmount;
  readonly cost: CostParts;
  /** `cost.total` if the ink is what it will be at the least and at the most. */
  readonly spread: { readonly low: number; readonly high: number };
  /** `cost.total` for each piece that is wanted, not rounded. */
  readonly perPiece: number;
  /** Whether no other candidate is as good in cost, time and waste, and better in one of them. */
  readonly unbeaten: boolean;
}

export interface PlanCount extends SheetCount {
  /** What the overs were reckoned by. */
  readonly oversBy: Overs;
  /** Sheets spoiled with setting up; they are within `sheets`. */
  readonly makeReady: number;
  /** Pieces that are wanted, of all designs. */
  readonly pieces: number;
  /** What is bought: sheets, parent sheets, or metres of a roll. */
  readonly bought: number;
}

/** In m2. `bought` = `pieces` + `waste`; `waste` = `offcuts` + `aroundPieces` + `spare`. */
export interface PlanArea {
  readonly bought: number;
  /** The trims of the pieces that are wanted. */
  readonly pieces: number;
  readonly waste: number;
  /** What is left of parent sheets. */
  readonly offcuts: number;
  /** Margins and gutters of all sheets. */
  readonly aroundPieces: number;
  /** Trims of the pieces beyond those wanted, spoiled or left over. */
  readonly spare: number;
}

/** In seconds. `total` = `printing` + `handling` + `makeReady` + `cutting` = `attended` + `unattended`. */
export interface PlanTime {
  readonly total: number;
  /** The machine at work. */
  readonly printing: number;
  /** Loading, aligning and turning. */
  readonly handling: number;
  readonly makeReady: number;
  /** Cutting down and trimming. */
  readonly cutting: number;
  /** While a person has to stand there. */
  readonly attended: number;
  readonly unattended: number;
}

/** In the library's currency, each rounded to a hundredth; `total` is the sum of the rounded parts. */
export interface CostParts {
  readonly paper: number;
  readonly ink: number;
  /** The person at the printer, but for setting up. */
  readonly labour: number;
  readonly makeReady: number;
  /** The person at the cutter. */
  readonly trimming: number;
  readonly wear: number;
  readonly total: number;
}

/** How much of a face its inks cover, the sum of all inks: 0 is blank, 4 is four inks that all cover whole. */
export type Coverage = (piece: string, face: FaceName) => number;

/** What is not possible, and why. */
export interface Refused {
  readonly printer: string;
  readonly feed: string;
  /** None where it does not depend on the paper. */
  readonly paper?: string | undefined;
  /** Across the feed, along it, as typed; none where it does not depend on the sheet. */
  readonly sheet?: readonly [Length, Length] | undefined;
  /** None where it does not depend on the way of working. */
  readonly works: readonly Work[];
  readonly fault: Fault;
}
