// What there is to see at a position: both faces of a piece, how they get into the hand, and what surrounds them.
import { type Head, lying } from '../geometry/head.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Edges, Rect } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { seenFromBehind } from '../geometry/turn.ts';
import type { Bleeding } from '../layout/bleeding.ts';
import { leastReach, type Reaches } from '../layout/bleedReach.ts';
import { type FaceName, otherFace, type Position } from '../layout/position.ts';
import { edgeTowards, OUTWARD, onFace } from './edges.ts';
import type { SideNumber } from './finding.ts';
import { gridFor, type PixelGrid, pictureSize, sheetToPicture } from './grid.ts';
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
import { flipSource, type Renderable } from './pageSource.ts';
import type { Flip, Picture } from './picture.ts';
import { resampled, type SideDrawing } from './sideDrawing.ts';
import { wantedBleeds } from './wantedBleed.ts';

/** The sides that are proved, each as it was written and drawn: its lead edge up. */
export interface DrawnSides {
  readonly side1?: SideDrawing;
  readonly side2?: SideDrawing;
}

/** One face at one position, in the hand. */
export interface FaceView {
  /** From 1. */
  readonly position: number;
  readonly side: SideNumber;
  readonly piece: ProofPiece;
  readonly face: FaceName;
  readonly grid: PixelGrid;
  readonly lie: Head;
  /** The trim as it lies on its side, and the side. */
  readonly trim: Rect;
  readonly drawing: SideDrawing;
  /** The face as it looks in the hand, out of the drawing of its side. */
  readonly picture: Picture;
  /** The same, rendered by itself for measuring. */
  readonly render: () => Picture;
  /** The bleed that must be seen at each edge of the face. */
  readonly wanted: Reaches;
  /** Where a direction on the upright face points on its side of the sheet, lead edge up. */
  readonly onSide: (direction: Direction) => Direction;
}

/** Everything that is to be looked at on these sides, in the order of the positions; pictures are taken when asked for. */
export function* faceViews(job: ProofJob, sides: DrawnSides, dpi: number): Generator<FaceView> {
  const placed = job.positions.map((position) => place(position, job.pieces));
  const wanted = wantedBleeds(placed, job.sheet);
  for (const [i, one] of placed.entries()) {
    const { position, piece, bleed } = one;
    const around = wanted[i];
    if (around === undefined) continue;
    const cut: Cut = {
      number: i + 1,
      position,
      piece,
      grid: gridFor(piece.trim, bleed, dpi),
      around,
    };
    if (sides.side1 !== undefined) {
      const steps = stepsToShownFace(position.head);
      const { trim } = position;
      yield pickUp(cut, { side: 1, face: position.face, trim, drawing: sides.side1, steps, toSide: steps });
    }
    if (sides.side2 !== undefined && job.turn !== undefined) {
      const flip = throughPaper(job.turn);
      const steps = stepsToFaceBehind(position.head, piece.turned);
      const trim = seenFromBehind<'side1'>(position.trim, job.turn, job.sheet);
      const drawing = sides.side2;
      const face = otherFace(position.face);
      yield pickUp(cut, { side: 2, face, trim, drawing, flip, steps, toSide: [{ flip }, ...steps] });
    }
  }
}

/** One piece that is cut out of the sheet, and the bleed that must be seen around it on side 1. */
interface Cut {
  readonly number: number;
  readonly position: Position;
  readonly piece: ProofPiece;
  readonly grid: PixelGrid;
  readonly around: Reaches;
}

/** One side of a cut piece: the steps from side 1 being on top to the face in the hand, and those with the sheet's own. */
interface CutSide {
  readonly side: SideNumber;
  readonly face: FaceName;
  readonly trim: Rect;
  readonly drawing: SideDrawing;
  readonly flip?: Flip;
  readonly steps: readonly Step[];
  readonly toSide: readonly Step[];
}

/** Cuts a piece out of a side, seen with side 1 on top, and turns it. */
function pickUp(cut: Cut, { side, face, trim, drawing, flip, steps, toSide }: CutSide): FaceView {
  const { number, position, piece, grid, around } = cut;
  const { width, height } = pictureSize(grid, position.head);
  const cutOut = (source: Renderable) => {
    const above = flip === undefined ? source : flipSource(source, flip);
    const matrix = sheetToPicture(grid, position.trim, position.head);
    return takeSteps(above.render(matrix, width, height), steps);
  };
  const picture = once(() => cutOut(resampled(drawing)));
  return {
    position: number,
    side,
    piece,
    face,
    grid,
    lie: turnedBy(toSide),
    trim,
    drawing,
    get picture() {
      return picture();
    },
    render: once(() => cutOut(drawing.source)),
    wanted: onFace(around, position.trim, steps),
    onSide: (direction) => undoSteps(direction, toSide),
  };
}

/** What `make` makes, made when it is first asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** A position with its piece. Throws for a position that does not fit its piece: the layout has been checked before. */
function place(
  position: Position,
  pieces: readonly ProofPiece[],
): Bleeding<'side1'> & { position: Position; piece: ProofPiece } {
  const piece = pieces.find((p) => p.name === position.piece);
  if (piece === undefined) throw new Error(`No piece is called "${position.piece}"`);
  const { trim } = position;
  const { w, h } = lying(piece.trim, position.head);
  if (!same(trim.w, w) || !same(trim.h, h)) {
    throw new Error(`A position of "${piece.name}" is ${trim.w} x ${trim.h} pt, its trim ${w} x ${h} pt`);
  }
  return { position, piece, trim, bleed: piece.bleed };
}

const SHEET_EDGES: Readonly<Record<keyof Edges, SheetEdge>> = {
  left: 'left',
  right: 'right',
  top: 'lead',
  bottom: 'tail',
};

/** The edge of the side, named as the printer meets it, on which an edge of the face lies. */
export function sheetEdge(look: FaceView, edge: keyof Edges): SheetEdge {
  return SHEET_EDGES[edgeTowards(look.onSide(OUTWARD[edge]))];
}

/** The trim and the bleed that must be seen all along its edges, in pt from the middle of the trim. */
export function printedRect({ piece: { trim }, wanted: reaches }: FaceView): Rect<'piece'> {
  const wanted = leastReach(reaches);
  return {
    x: -trim.w / 2 - wanted.left,
    y: -trim.h / 2 - wanted.bottom,
    w: trim.w + wanted.left + wanted.right,
    h: trim.h + wanted.bottom + wanted.top,
  };
}
