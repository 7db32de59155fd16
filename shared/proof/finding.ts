// What a proof can find wrong, what it cannot tell, and the report that holds both.
import type { Head } from '../geometry/head.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Size } from '../geometry/space.ts';
import type { FaceOf } from './job.ts';

/** The sides by number. */
export type SideNumber = 1 | 2;

/** How far something is from its place, in mm, as seen on its side of the sheet with the lead edge up. */
export interface FaceShift {
  readonly right: number;
  /** Towards the lead edge. */
  readonly lead: number;
}

/** How far the bleed reaches past one edge of the trim, and how far it should, in mm. The edge as seen on the side. */
export interface Reach {
  readonly edge: SheetEdge;
  readonly reaches: number;
  readonly wanted: number;
}

interface OnSide {
  readonly side: SideNumber;
  /** One plain sentence. */
  readonly message: string;
}

/** A fault of a whole side. Sizes in pt. */
export type SheetFinding = OnSide &
  (
    | { readonly kind: 'sheet-size'; readonly measured: { readonly page: Size; readonly sheet: Size } }
    | { readonly kind: 'sheet-cropped'; readonly measured: { readonly shown: Size; readonly page: Size } }
    | { readonly kind: 'page-count'; readonly measured: { readonly pages: number; readonly wanted: number } }
    | { readonly kind: 'mark-missing' | 'stray-ink'; readonly measured: PlaceOnSide }
  );

/** A place on a side, in mm: its middle from the left edge and from the tail, and its size. */
export interface PlaceOnSide {
  readonly left: number;
  readonly tail: number;
  readonly across: number;
  readonly along: number;
}

/** What is wrong with one face at one position. */
export type FaceFault =
  | { readonly kind: 'upside-down' | 'quarter-turned' | 'mirrored' }
  | { readonly kind: 'wrong-face' | 'wrong-piece' }
  | { readonly kind: 'nothing-printed' | 'unexpected-print' }
  | { readonly kind: 'off-place'; readonly measured: FaceShift }
  /** Percent of the true size. */
  | { readonly kind: 'wrong-scale'; readonly measured: { readonly across: number; readonly up: number } }
  /** Degrees counter-clockwise. */
  | { readonly kind: 'askew'; readonly measured: { readonly degrees: number } }
  /** The share of the trim that shows something else, 0 to 1. */
  | { readonly kind: 'art-differs'; readonly measured: { readonly share: number } }
  | { readonly kind: 'bleed-short'; readonly measured: Reach };

/** A fault at a position. `position` counts from 1; `piece` and `face` say what should be there. */
export type PositionFinding = OnSide & FaceOf & { readonly position: number } & FaceFault;

/** Anything a proof can find wrong. A switch over `kind` can be exhaustive. */
export type ProofFinding = SheetFinding | PositionFinding;

/** What the art itself leaves untold; no fault. */
export interface ProofNote extends FaceOf {
  readonly kind: 'flat' | 'head-untold' | 'mirror-untold' | 'place-untold' | 'alike';
  readonly message: string;
}

/** What was recognised at a position. */
export interface Recognised extends FaceOf {
  /** How far its head is turned from where it should be, counter-clockwise, as held in the hand. */
  readonly turned: Head;
  /** Whether it was flipped left to right before it was turned. */
  readonly mirrored: boolean;
}

/** What was seen of one face at one position. */
export interface Seen extends FaceOf {
  readonly position: number;
  readonly side: SideNumber;
  /** `undefined` where nothing of the job was recognised, or nothing had to be there. */
  readonly recognised: Recognised | undefined;
  /** `undefined` where nothing was recognised or the art does not tell. */
  readonly shift: FaceShift | undefined;
  readonly bleed: readonly Reach[];
}

/** The outcome of a proof. */
export interface ProofReport {
  readonly findings: readonly ProofFinding[];
  readonly notes: readonly ProofNote[];
  /** How many faces were compared. */
  readonly checked: number;
  readonly positions: readonly Seen[];
}
