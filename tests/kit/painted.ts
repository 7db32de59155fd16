// Paint on paper without any PDF: faces are formulas, sheets are what was painted on them, renderings are samples.
import { HEADS, type Head, type ReaderTurn } from '../../shared/geometry/head.ts';
import type { Size } from '../../shared/geometry/space.ts';
import { inverse } from '../../shared/geometry/transform.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import type { Position } from '../../shared/layout/position.ts';
import type { FaceArt, ProofJob, ProofPiece } from '../../shared/proof/job.ts';
import type { PageSource } from '../../shared/proof/pageSource.ts';
import type { Picture } from '../../shared/proof/picture.ts';
import { cutOut, hold, print, turned, unturned } from './paper.ts';
import { sourceBy } from './sourceBy.ts';

export type Colour = readonly [number, number, number];

/** The colour of a face at a point in pt from the middle of its trim, head up. */
export type Paint = (x: number, y: number) => Colour;

export const PAPER: Colour = [255, 255, 255];

/** Something flat that is painted all over; every pixel is the mean of two by two samples. */
export function paintedSource(size: Size, paint: Paint): PageSource {
  return sourceBy(size, (matrix, width, height) => {
    const { a, b, c, d, e, f } = inverse(matrix);
    const pixels = new Uint8Array(width * height * 3);
    for (let i = 0; i < width * height; i++) {
      let [red, green, blue] = [0, 0, 0];
      for (let sample = 0; sample < 4; sample++) {
        const u = (i % width) + (sample % 2 === 0 ? 0.25 : 0.75);
        const v = Math.floor(i / width) + (sample < 2 ? 0.25 : 0.75);
        const x = a * u + c * v + e;
        const y = b * u + d * v + f;
        const colour = x >= 0 && y >= 0 && x <= size.w && y <= size.h ? paint(x, y) : PAPER;
        red += colour[0];
        green += colour[1];
        blue += colour[2];
      }
      pixels[i * 3] = Math.round(red / 4);
      pixels[i * 3 + 1] = Math.round(green / 4);
      pixels[i * 3 + 2] = Math.round(blue / 4);
    }
    return { width, height, pixels };
  });
}

/** A lopsided face: a bar at the head, a disc to the right of the foot, a wedge at the left, all on a ground. */
export function lopsidedPaint({ w, h }: Size, ground: Colour, ink: Colour = [30, 30, 60]): Paint {
  return (x, y) => {
    const [u, v] = [x / w, y / h];
    if (Math.abs(v - 0.3) < 0.08 && u > -0.4 && u < 0.25) return ink;
    if (Math.hypot(x - w * 0.25, y + h * 0.22) < Math.min(w, h) * 0.13) return [200, 40, 40];
    if (u > -0.35 && v > -0.35 && u + v < -0.35) return [20, 110, 60];
    return ground;
  };
}

/** One face as it was printed on a side. `spoil` moves, turns or bends it in its own frame before it is laid down. */
export interface Printed {
  readonly paint: Paint;
  readonly size: Size;
  readonly bleed: number;
  readonly middle: { readonly x: number; readonly y: number };
  readonly head: number;
  readonly spoil?: (x: number, y: number) => readonly [number, number];
}

/** A side of a sheet on which these faces are printed, the first on top. */
export function printedSource(sheet: Size, faces: readonly Printed[]): PageSource {
  const laid = faces.map((face) => {
    const angle = (-face.head * Math.PI) / 180;
    return { ...face, cos: Math.cos(angle), sin: Math.sin(angle) };
  });
  return paintedSource(sheet, (x, y) => {
    for (const { paint, size, bleed, middle, cos, sin, spoil } of laid) {
      const [dx, dy] = [x - middle.x, y - middle.y];
      let [u, v] = [dx * cos - dy * sin, dx * sin + dy * cos];
      if (spoil !== undefined) [u, v] = spoil(u, v);
      if (Math.abs(u) <= size.w / 2 + bleed && Math.abs(v) <= size.h / 2 + bleed) return paint(u, v);
    }
    return PAPER;
  });
}

/** Where the back of a position lies on side 2, found by trying all heads on paper in space. */
export function backOnSide2(
  { trim, head }: Position,
  turn: Turn,
  readerTurn: ReaderTurn,
  sheet: Size,
): { readonly middle: { x: number; y: number }; readonly head: Head } {
  const box =
    turn === 'side-to-side'
      ? { ...trim, x: sheet.w - trim.x - trim.w }
      : { ...trim, y: sheet.h - trim.y - trim.h };
  const front = print([{ art: 'front', trim, head }], unturned);
  const found = HEADS.find((candidate) => {
    const back = print([{ art: 'back', trim: box, head: candidate }], turned(turn, sheet.w, sheet.h));
    const seen = hold(cutOut([...front, ...back], trim), head);
    const over = readerTurn === 'head-to-head' ? seen.turnedLikeAPage : seen.turnedLikeACalendar;
    return over['back head'] === 'up' && over['back left'] === 'left';
  });
  if (found === undefined) throw new Error('No head of the back reads right');
  return { middle: { x: box.x + box.w / 2, y: box.y + box.h / 2 }, head: found };
}

/** A piece whose faces are painted. */
export interface PaintedPiece {
  readonly name: string;
  readonly trim: Size;
  readonly bleed: number;
  readonly turned: ReaderTurn;
  readonly front: Paint;
  readonly back?: Paint;
}

/** The pieces as a proof knows them; the page of a face is its place among all faces. */
export function proofPieces(pieces: readonly PaintedPiece[]): readonly ProofPiece[] {
  let page = 0;
  return pieces.map(({ name, trim, bleed, turned: readerTurn, back }) => {
    const face = (): FaceArt => {
      page += 1;
      return { art: 'painted', page, rotate: 0, trim: { x: bleed, y: bleed, w: trim.w, h: trim.h } };
    };
    const front = face();
    const faces = back === undefined ? { front } : { front, back: face() };
    return { name, trim, bleed, turned: readerTurn, faces };
  });
}

/** The pages of art of these pieces: each face with its bleed. */
export function pagesOf(pieces: readonly PaintedPiece[]): (face: FaceArt) => PageSource {
  const pages = pieces.flatMap(({ trim, bleed, front, back }) =>
    [front, back].flatMap((paint) => {
      if (paint === undefined) return [];
      const size = { w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
      return [paintedSource(size, (x, y) => paint(x - size.w / 2, y - size.h / 2))];
    }),
  );
  return ({ page }) => pages[page - 1]!;
}

/** Both sides of a job, every face in its place; `spoil` changes what is printed at a position (from 1) of a side. */
export function printJob(
  job: ProofJob,
  pieces: readonly PaintedPiece[],
  spoil: (printed: Printed, position: number, side: 1 | 2) => Printed | undefined = (printed) => printed,
): { readonly side1: PageSource; readonly side2: PageSource } {
  const side = (number: 1 | 2) =>
    printedSource(
      job.sheet,
      job.positions.flatMap((position, i) => {
        const piece = pieces.find(({ name }) => name === position.piece)!;
        const front = (position.face === 'front') === (number === 1);
        const paint = front ? piece.front : piece.back;
        if (paint === undefined) return [];
        const { trim } = position;
        const on1 = { middle: { x: trim.x + trim.w / 2, y: trim.y + trim.h / 2 }, head: position.head };
        const lies = number === 1 ? on1 : backOnSide2(position, job.turn!, piece.turned, job.sheet);
        const printed = spoil({ paint, size: piece.trim, bleed: piece.bleed, ...lies }, i + 1, number);
        return printed === undefined ? [] : [printed];
      }),
    );
  return { side1: side(1), side2: side(2) };
}

/** A picture from rows of letters, each the name of a colour in `colours`. */
export function pictureOfLetters(
  rows: readonly string[],
  colours: Readonly<Record<string, Colour>>,
): Picture {
  const width = rows[0]!.length;
  const pixels = Uint8Array.from([...rows.join('')].flatMap((letter) => [...colours[letter]!]));
  return { width, height: rows.length, pixels };
}
