// The brief: what the customer wants and what it is printed on, as a person wrote it.
import type { Head, ReaderTurn } from '../geometry/head.ts';
import type { SheetHold } from '../geometry/register.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Work } from '../geometry/work.ts';
import type { Centring } from '../layout/centring.ts';
import type { Overs } from '../layout/count.ts';
import type { Lies } from '../layout/lies.ts';
import type { Length, Unit } from '../units/length.ts';
import type { JobPlan } from './jobPlan.ts';

/** The customer's order and the sheet it goes on. Lengths keep the unit they were typed in. */
export interface Brief {
  /** The unit of lengths typed without one, and the unit the person reads. */
  readonly units: Unit;
  readonly title: string;
  readonly sheet: SheetBrief;
  readonly work: Work;
  /** From trim to trim of neighbours. */
  readonly gutter: Length;
  readonly centring: Centring;
  readonly marks: boolean;
  readonly overs: Overs;
  /** The pattern that the written files are named by. */
  readonly fileNames: string;
  readonly pieces: readonly Piece[];
  /** Where it was planned to run; none where the sheet was typed in. */
  readonly plan?: JobPlan | undefined;
}

export interface SheetBrief {
  /** Across the feed, along the feed. */
  readonly size: readonly [Length, Length];
  readonly unprintable: Readonly<Record<SheetEdge, Length>>;
  readonly hold: SheetHold;
  /** Whether both sides of the paper are alike, which one form for both passes needs. */
  readonly sidesAlike: boolean;
}

/** One design: its size, its two faces and how many are wanted. */
export interface Piece {
  readonly name: string;
  /** Width and height with the head up. */
  readonly trim: readonly [Length, Length];
  readonly bleed: Length;
  /** How far inside the trim type must stay. */
  readonly safe: Length;
  readonly turned: ReaderTurn;
  readonly lies: Lies;
  readonly quantity: number;
  readonly front: Face;
  /** A piece without a back is printed on one side, or blank behind. */
  readonly back?: Face | undefined;
}

/** The page that a face is printed from. */
export interface Face {
  /** The PDF, relative to the file that names it. */
  readonly file: string;
  /** From 1. */
  readonly page: number;
  /** How far the page is turned to bring its head up, in degrees counter-clockwise. */
  readonly rotate: Head;
  /** Where the lower left of the trim lies on the turned page, for a page that does not say so itself. */
  readonly trimAt?: readonly [Length, Length] | undefined;
}
