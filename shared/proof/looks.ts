// What there is to see at a position: both faces of a piece, how they get into the hand, and what surrounds them.
import { type Head, lying } from '../geometry/head.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Edges, Rect } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { type FaceName, otherFace, type Position } from '../layout/position.ts';
import type { SideNumber } from './finding.ts';
import { type Grid, gridFor, lensOverSheet, pictureSize } from './grid.ts';
import {
  type Direction,
  type Step,
  stepsToFaceBehind,
  stepsToShownFace,
  takeSteps,
  throughPaper,
  turnedBy,
  undoSteps,
} from './hand.ts';
import type { ProofJob, ProofPiece } from './job.ts';
import type { Picture } from './picture.ts';
import { FACE_EDGES } from './reach.ts';
import { flipSight, type Sight } from './sight.ts';
import { type TrimAndBleed, wantedBleed } from './wantedBleed.ts';

/** The sides that are proved, each as it was written: its lead edge up. */
export interface Sides {
  readonly side1?: Sight;
  readonly side2?: Sight;
}

/** One face at one position, in the hand. */
export interface Look {
  /** From 1. */
  readonly position: number;
  readonly side: SideNumber;
  readonly piece: ProofPiece;
  readonly face: FaceName;
  readonly grid: Grid;
  readonly lie: Head;
  readonly picture: Picture;
  /** The bleed that must be seen at each edge of the face, in pt. */
  readonly wanted: Edges;
  /** Where a direction on the upright face points on its side of the sheet, lead edge up. */
  readonly onSide: (direction: Direction) => Direction;
}

/** Everything that is to be looked at on these sides, in the order of the positions; pictures are taken one by one. */
export function* lookAt(job: ProofJob, sides: Sides, dpi: number): Generator<Look> {
  const { turn } = job;
  const placed = job.positions.map((position) => place(position, job.pieces));
  for (const [i, { position, piece, trim, bleed }] of placed.entries()) {
    const grid = gridFor(piece.trim, bleed, dpi);
    const others = placed.filter((_, other) => other !== i);
    const around = wantedBleed({ trim, bleed }, others, job.sheet);
    const look = (
      side: SideNumber,
      face: FaceName,
      sight: Sight,
      steps: readonly Step[],
      toSide: readonly Step[],
    ) => {
      const { width, height } = pictureSize(grid, position.head);
      const cut = sight.photograph(lensOverSheet(grid, trim, position.head), width, height);
      return {
        position: i + 1,
        side,
        piece,
        face,
        grid,
        lie: turnedBy(toSide),
        picture: takeSteps(cut, steps),
        wanted: onFace(around, steps),
        onSide: (direction: Direction) => undoSteps(direction, toSide),
      };
    };
    if (sides.side1 !== undefined) {
      const steps = stepsToShownFace(position.head);
      yield look(1, position.face, sides.side1, steps, steps);
    }
    if (sides.side2 !== undefined && turn !== undefined) {
      const flip = throughPaper(turn);
      const steps = stepsToFaceBehind(position.head, piece.turned);
      yield look(2, otherFace(position.face), flipSight(sides.side2, flip), steps, [{ flip }, ...steps]);
    }
  }
}

/** A position with its piece. Throws for a position that does not fit its piece: the layout has been checked before. */
function place(
  position: Position,
  pieces: readonly ProofPiece[],
): TrimAndBleed & { position: Position; piece: ProofPiece } {
  const piece = pieces.find((p) => p.name === position.piece);
  if (piece === undefined) throw new Error(`No piece is called "${position.piece}"`);
  const { trim } = position;
  const { w, h } = lying(piece.trim, position.head);
  if (!same(trim.w, w) || !same(trim.h, h)) {
    throw new Error(`A position of "${piece.name}" is ${trim.w} x ${trim.h} pt, its trim ${w} x ${h} pt`);
  }
  return { position, piece, trim, bleed: piece.bleed };
}

const OUTWARD: Readonly<Record<keyof Edges, Direction>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  top: { x: 0, y: 1 },
  bottom: { x: 0, y: -1 },
};

/** The edge of something upright that lies in this direction. */
function edgeTowards({ x, y }: Direction): keyof Edges {
  if (x !== 0) return x < 0 ? 'left' : 'right';
  return y < 0 ? 'bottom' : 'top';
}

/** Lengths at the edges of side 1 as lengths at the edges of the face that these steps bring up. */
function onFace(lengths: Edges, steps: readonly Step[]): Edges {
  const [left, right, top, bottom] = FACE_EDGES.map(
    (edge) => lengths[edgeTowards(undoSteps(OUTWARD[edge], steps))],
  );
  return { left, right, top, bottom } as Edges;
}

/** The edge of the side, named as the printer meets it, on which an edge of the face lies. */
export function sheetEdge(look: Look, edge: keyof Edges): SheetEdge {
  const onSide = edgeTowards(look.onSide(OUTWARD[edge]));
  if (onSide === 'top') return 'lead';
  return onSide === 'bottom' ? 'tail' : onSide;
}

/** The trim and the bleed that must be seen, in pt from the middle of the trim. */
export function printedRect({ piece: { trim }, wanted }: Look): Rect<'piece'> {
  return {
    x: -trim.w / 2 - wanted.left,
    y: -trim.h / 2 - wanted.bottom,
    w: trim.w + wanted.left + wanted.right,
    h: trim.h + wanted.bottom + wanted.top,
  };
}
