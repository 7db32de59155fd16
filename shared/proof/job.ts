// What a proof has to know: the sheet, how it is turned, what lies where, and the art that should be seen there.
import type { Head, ReaderTurn } from '../geometry/head.ts';
import type { Rect, Size } from '../geometry/space.ts';
import type { Turn } from '../geometry/turn.ts';
import type { FaceName, Position } from '../layout/position.ts';

/** Where the art of a face is found. */
export interface FaceArt {
  /** The key of the art file. */
  readonly art: string;
  /** The page, from 1. */
  readonly page: number;
  /** How far the page, as a viewer shows it, is turned counter-clockwise to bring the head of the face up. */
  readonly rotate: Head;
  /** The trim on the page so turned, in pt, with the lower left of its media box at the origin. */
  readonly trim: Rect<'art'>;
  /** The page's UserUnit, in 1/72 inch; 1 where the page names none. The trim has it applied. */
  readonly userUnit?: number;
}

/** One piece: its trim with the head up and its bleed, in pt, and the art of its faces. */
export interface ProofPiece {
  readonly name: string;
  readonly trim: Size;
  readonly bleed: number;
  readonly turned: ReaderTurn;
  readonly faces: { readonly front: FaceArt; readonly back?: FaceArt };
}

/** All that a proof has to know of a job. */
export interface ProofJob {
  /** Across the feed and along it, in pt. */
  readonly sheet: Size;
  /** How the sheet is turned between the passes; `undefined` where it is printed on one side only. */
  readonly turn: Turn | undefined;
  readonly positions: readonly Position[];
  readonly pieces: readonly ProofPiece[];
}

/** One face of one piece. */
export interface FaceOf {
  readonly piece: string;
  readonly face: FaceName;
}
