// The cutting order: every cut of the stack as a person makes it at the guillotine, one after another.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Point, Rect, Size } from '../geometry/space.ts';
import type { Position } from '../layout/position.ts';
import type { Cutter, Hand } from './cutter.ts';

/**
 * Quarter turns of the stack on the table, clockwise as seen from above; -1 is one the other way, 2 is half round.
 * The stack is never turned over: side 1 lies up from the first cut to the last.
 */
export type QuarterTurns = 0 | 1 | 2 | -1;

/**
 * What a cut does. `margin`: trims the outer margin away. `common`: one cut parts two neighbours whose trims touch.
 * `gutter`: the first of the two cuts of a gutter, which leaves the gutter on one of the two. `second`: the other cut,
 * which takes the gutter away. `offcut`: takes away paper on which nothing lies.
 */
export type CutKind = 'margin' | 'common' | 'gutter' | 'second' | 'offcut';

/** What lies on one side of the knife after a cut. */
export type CutOutcome =
  | { readonly becomes: 'waste'; readonly area: Rect<'side1'> }
  /** A finished piece: the position of this number, counted from 0. */
  | { readonly becomes: 'piece'; readonly area: Rect<'side1'>; readonly position: number }
  /** A part that is cut further, under the name it has from now on. */
  | { readonly becomes: 'stack'; readonly area: Rect<'side1'>; readonly stack: string };

/** One stack under the knife. */
export interface CutPart {
  /** The name of the stack: the whole sheet is A, parts get the next letters as they are cut free. */
  readonly stack: string;
  /** The part of the sheet that lies on the table, as it lay on side 1, lead edge up, in pt. */
  readonly area: Rect<'side1'>;
  /** Where the knife comes down, on side 1. */
  readonly line: readonly [Point<'side1'>, Point<'side1'>];
  /** Between the back gauge and the knife, under the clamp. */
  readonly behind: CutOutcome;
  /** On the near side of the knife, where it falls free. */
  readonly inFront: CutOutcome;
}

/**
 * How far an error in the size of the paper reaches this cut: the share of it that lies between the cut and the image
 * of each side. `side2` is missing where the sheet is printed on one side only.
 */
export interface CutRegister {
  readonly dimension: 'width' | 'length';
  /** The edge of the untrimmed sheet that this cut goes back to, by way of the cuts it was held against. */
  readonly from: SheetEdge;
  readonly side1: 0 | 0.5 | 1;
  readonly side2?: 0 | 0.5 | 1;
}

/** One setting of the back gauge, and all stacks that are cut with it in the same lie. */
export interface CutStep {
  /** From 1. */
  readonly number: number;
  /** How the stacks are turned since they last lay on the table; 0 in the first step. */
  readonly turned: QuarterTurns;
  /** The edge that lies at the back gauge, as the sheet's edge on that side is named on side 1. */
  readonly gauge: SheetEdge;
  /** The side guide that is used, and the edge that lies at it. */
  readonly side: { readonly hand: Hand; readonly edge: SheetEdge };
  /** From the back gauge to the knife, in pt. */
  readonly distance: number;
  readonly kind: CutKind;
  /** All of one lie and of one depth from the gauge, cut side by side or one after another. */
  readonly parts: readonly [CutPart, ...CutPart[]];
  /** How often the knife comes down if the stacks lie side by side as far as the cutter is wide. */
  readonly strokes: number;
  readonly register: CutRegister;
}

/** How the printed sheets are shared out into piles that the cutter takes. */
export interface Lifts {
  /** Sheets in each lift, as even as can be, the larger ones first. */
  readonly sheets: readonly number[];
  /** The height of the highest, in pt. */
  readonly height: number;
}

/** Everything the person at the guillotine needs. All lengths in pt. */
export interface CuttingOrder {
  readonly sheet: Size;
  readonly arrangement: readonly Position[];
  readonly cutter: Cutter;
  /** The two edges that the sheets are knocked up to before the first cut: those that held them in the printer. */
  readonly knockUp: readonly ['lead', 'left' | 'right'];
  readonly steps: readonly CutStep[];
  /** How often the back gauge is moved to another distance, the first time included. */
  readonly settings: number;
  /** Cuts if every stack is cut alone. */
  readonly cuts: number;
  /** Cuts if stacks of one setting are cut side by side. */
  readonly strokes: number;
  /** How often a stack is turned, every stack alone. */
  readonly turns: number;
  /** Whether no order has fewer cuts, and none of as many cuts fewer turns. */
  readonly fewest: boolean;
  /** Missing where the number of sheets or their caliper is not known. */
  readonly lifts?: Lifts;
  /** What the person should know before the first cut, in words: cautions last. */
  readonly notices: readonly string[];
}
