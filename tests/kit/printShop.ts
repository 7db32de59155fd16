// A print shop for the tests of the proof: art, and sheets that are printed by following points of the paper.
import {
  clip,
  concatTransformationMatrix,
  drawObject,
  endPath,
  PDFDocument,
  type PDFEmbeddedPage,
  type PDFFont,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rectangle,
  rgb,
  StandardFonts,
} from 'pdf-lib';
import type { Head, ReaderTurn } from '../../shared/geometry/head.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import type { FaceName, Position } from '../../shared/layout/position.ts';
import type { ProofJob, ProofPiece } from '../../shared/proof/job.ts';

/** A matrix as PDF writes it. */
type Matrix = readonly [number, number, number, number, number, number];

/** First `first`, then `second`. */
function after(first: Matrix, second: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [A, B, C, D, E, F] = second;
  return [A * a + C * b, B * a + D * b, A * c + C * d, B * c + D * d, A * e + C * f + E, B * e + D * f + F];
}

/** What can be done to a printed face on purpose, in its own upright frame about the middle of its trim. */
export interface Spoil {
  readonly turned?: Head;
  readonly mirrored?: boolean;
  /** pt to the right and up on the side of the sheet. */
  readonly shift?: readonly [number, number];
  readonly scale?: number;
  readonly askew?: number;
  readonly face?: FaceName;
  readonly piece?: string;
  readonly missing?: boolean;
  /** pt of bleed that are printed, instead of the piece's own. */
  readonly bleed?: number;
}

/** What was ordered, and the art that came with it. */
export interface Shop {
  readonly job: ProofJob;
  readonly art: ReadonlyMap<string, Uint8Array>;
}

const KEY = 'art.pdf';

/** A shop for these pieces, whose art is drawn by `draw` in a frame with the trim's lower left at the origin. */
export async function openShop(
  sheet: { w: number; h: number },
  turn: Turn | undefined,
  positions: readonly Position[],
  pieces: readonly {
    readonly name: string;
    readonly w: number;
    readonly h: number;
    readonly bleed: number;
    readonly turned: ReaderTurn;
    readonly front: Draw;
    readonly back?: Draw;
  }[],
): Promise<Shop> {
  const art = await PDFDocument.create();
  const pen = await penFor(art);
  const proofPieces: ProofPiece[] = [];
  let page = 0;
  for (const { name, w, h, bleed, turned, front, back } of pieces) {
    const faceArt = (draw: Draw) => {
      const on = art.addPage([w + 2 * bleed, h + 2 * bleed]);
      on.pushOperators(pushGraphicsState(), concatTransformationMatrix(1, 0, 0, 1, bleed, bleed));
      draw(on, { ...pen, w, h, bleed });
      on.pushOperators(popGraphicsState());
      page += 1;
      return { art: KEY, page, rotate: 0 as Head, trim: { x: bleed, y: bleed, w, h } };
    };
    const faces =
      back === undefined ? { front: faceArt(front) } : { front: faceArt(front), back: faceArt(back) };
    proofPieces.push({ name, trim: { w, h }, bleed, turned, faces });
  }
  return {
    job: { sheet, turn, positions, pieces: proofPieces },
    art: new Map([[KEY, await art.save()]]),
  };
}

export interface Pen {
  readonly regular: PDFFont;
  readonly bold: PDFFont;
  readonly w: number;
  readonly h: number;
  readonly bleed: number;
}

export type Draw = (on: PDFPage, pen: Pen) => void;

async function penFor(document: PDFDocument): Promise<Pick<Pen, 'regular' | 'bold'>> {
  return {
    regular: await document.embedFont(StandardFonts.TimesRoman),
    bold: await document.embedFont(StandardFonts.HelveticaBold),
  };
}

/** Lopsided art: a coloured ground to the bleed, a title at the head, an arrow up, small type, a disc at the right. */
export function lopsided(title: string, ground: readonly [number, number, number], line = ''): Draw {
  return (on, { regular, bold, w, h, bleed }) => {
    const [r, g, b] = ground;
    on.drawRectangle({
      x: -bleed,
      y: -bleed,
      width: w + 2 * bleed,
      height: h + 2 * bleed,
      color: rgb(r, g, b),
    });
    on.drawRectangle({ x: -bleed, y: -bleed, width: w / 3, height: bleed + h / 5, color: rgb(b, r, g) });
    const size = Math.min(h / 6, (w * 0.8) / bold.widthOfTextAtSize(title, 1));
    on.drawText(title, { x: w * 0.1, y: h * 0.75, size, font: bold, color: rgb(0.1, 0.1, 0.2) });
    on.drawSvgPath(`M 0 0 L ${w * 0.06} ${h * 0.2} L ${-w * 0.06} ${h * 0.2} Z`, {
      x: w * 0.25,
      y: h * 0.6,
      color: rgb(0.6, 0.1, 0.1),
    });
    on.drawCircle({ x: w * 0.8, y: h * 0.3, size: Math.min(w, h) * 0.09, color: rgb(0.1, 0.3, 0.6) });
    const small = `Bread, soup and cider from six o'clock ${line}`;
    on.drawText(small, { x: w * 0.4, y: h * 0.5, size: 5, font: regular, color: rgb(0, 0, 0) });
    on.drawLine({ start: { x: w * 0.4, y: h * 0.46 }, end: { x: w * 0.9, y: h * 0.46 }, thickness: 0.4 });
  };
}

/** How a spoiled printing differs from the right one, for each position (from 1) and side. */
export type Spoils = (position: number, side: 1 | 2) => Spoil;

/** Prints both sides as one file each (or one page), every point of the art following the paper. */
export async function printSides(
  shop: Shop,
  spoils: Spoils = () => ({}),
): Promise<{ side1: Uint8Array; side2: Uint8Array }> {
  return { side1: await printSide(shop, 1, spoils), side2: await printSide(shop, 2, spoils) };
}

async function printSide({ job, art }: Shop, side: 1 | 2, spoils: Spoils): Promise<Uint8Array> {
  const document = await PDFDocument.create();
  const page = document.addPage([job.sheet.w, job.sheet.h]);
  const bytes = art.get(KEY);
  if (bytes === undefined) throw new Error('The shop has no art');
  const source = await PDFDocument.load(bytes);
  const embedded = await document.embedPages(source.getPages());
  for (const [i, position] of job.positions.entries()) {
    placeOne(page, embedded, job, position, side, spoils(i + 1, side));
  }
  return document.save();
}

function placeOne(
  page: PDFPage,
  embedded: readonly PDFEmbeddedPage[],
  job: ProofJob,
  position: Position,
  side: 1 | 2,
  spoil: Spoil,
): void {
  if (spoil.missing === true) return;
  const own = job.pieces.find((p) => p.name === position.piece)!;
  const shown = side === 1 ? position.face : position.face === 'front' ? 'back' : 'front';
  const art = job.pieces.find((p) => p.name === (spoil.piece ?? position.piece))!.faces[spoil.face ?? shown];
  if (art === undefined) return;
  const { w, h } = own.trim;
  const bleed = spoil.bleed ?? own.bleed;
  const lie = side === 1 ? faceUp(position, own.trim) : faceBehind(position, own, job);
  const matrix = after(after(spoilMatrix(spoil, w, h), lie), [1, 0, 0, 1, ...(spoil.shift ?? [0, 0])]);
  const form = embedded[art.page - 1]!;
  const name = page.node.newXObject('Art', form.ref);
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(...matrix),
    rectangle(-bleed, -bleed, w + 2 * bleed, h + 2 * bleed),
    clip(),
    endPath(),
    concatTransformationMatrix(1, 0, 0, 1, -art.trim.x, -art.trim.y),
    drawObject(name),
    popGraphicsState(),
  );
}

/** From the upright face (trim's lower left at the origin) to side 1: turned by its head into its place. */
function faceUp({ trim, head }: Position, size: { w: number; h: number }): Matrix {
  const radians = (head * Math.PI) / 180;
  const [cos, sin] = [Math.round(Math.cos(radians)), Math.round(Math.sin(radians))];
  const about: Matrix = [1, 0, 0, 1, -size.w / 2, -size.h / 2];
  const turned: Matrix = [cos, sin, -sin, cos, trim.x + trim.w / 2, trim.y + trim.h / 2];
  return after(about, turned);
}

/**
 * From the back, as its reader sees it, to side 2. A point of the back lies right behind a point of the front: the
 * reader turned the piece over about one of its axes. And it lies on the sheet where the front does, which is seen on
 * side 2 where the sheet's own turn brings it.
 */
function faceBehind(position: Position, piece: ProofPiece, { turn, sheet }: ProofJob): Matrix {
  const { w, h } = piece.trim;
  const toFront: Matrix = piece.turned === 'head-to-head' ? [-1, 0, 0, 1, w, 0] : [1, 0, 0, -1, 0, h];
  const toSide2: Matrix = turn === 'side-to-side' ? [-1, 0, 0, 1, sheet.w, 0] : [1, 0, 0, -1, 0, sheet.h];
  return after(after(toFront, faceUp(position, piece.trim)), toSide2);
}

function spoilMatrix(spoil: Spoil, w: number, h: number): Matrix {
  const radians = (((spoil.turned ?? 0) + (spoil.askew ?? 0)) * Math.PI) / 180;
  const scale = spoil.scale ?? 1;
  const flip = spoil.mirrored === true ? -1 : 1;
  const [cos, sin] = [Math.cos(radians) * scale, Math.sin(radians) * scale];
  const about: Matrix = [flip, 0, 0, 1, (-flip * w) / 2, -h / 2];
  return after(about, [cos, sin, -sin, cos, w / 2, h / 2]);
}
