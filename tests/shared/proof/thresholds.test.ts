// What each threshold of the proof protects: a case drawn just below it, and one just above.
import { describe, expect, it } from 'vitest';
import type { Size } from '../../../shared/geometry/space.ts';
import type { ProofReport } from '../../../shared/proof/finding.ts';
import { DRAWN_FINER, prove } from '../../../shared/proof/prove.ts';
import {
  lopsidedPaint,
  type Paint,
  type PaintedPiece,
  type Printed,
  pagesOf,
  printedSource,
  proofPieces,
} from '../../kit/painted.ts';

/** At 80 pixels to the inch a pixel is 0.9 pt, and these trims are whole pixels; drawings are finer. */
const DPI = 80;
const DRAWN_PIXEL = 0.9 / DRAWN_FINER;
const MM = 72 / 25.4;

const pieceOf = (name: string, trim: Size, ground: readonly [number, number, number]): PaintedPiece => ({
  name,
  trim,
  bleed: 9,
  turned: 'head-to-head',
  front: lopsidedPaint(trim, ground),
});

/** Proves a sheet on which the first piece is wanted in the middle, and this was printed. */
function proofOf(
  pieces: readonly PaintedPiece[],
  printed: (middle: Printed['middle']) => Printed,
): ProofReport {
  const [{ trim, name }] = pieces as [PaintedPiece];
  const sheet = { w: trim.w + 180, h: trim.h + 180 };
  const middle = { x: sheet.w / 2, y: sheet.h / 2 };
  const position = { piece: name, face: 'front' as const, head: 0 as const, trim: { x: 90, y: 90, ...trim } };
  const job = { sheet, turn: undefined, positions: [position], pieces: proofPieces(pieces) };
  const proof = prove(job, { side1: printedSource(sheet, [printed(middle)]) }, pagesOf(pieces), { dpi: DPI });
  for (;;) {
    const next = proof.next();
    if (next.done) return next.value;
  }
}

const kinds = ({ findings }: ProofReport) => findings.map(({ kind }) => kind);

describe('a spot that the art does not have', () => {
  const supper = pieceOf('Supper', { w: 90, h: 63 }, [240, 225, 180]);

  /** So many pixels of the drawing of another colour, side by side, far from all that is drawn. */
  const spotted =
    (pixels: number): Paint =>
    (x, y) =>
      x > 0 && x < pixels * DRAWN_PIXEL && y > 0 && y < DRAWN_PIXEL ? [30, 30, 60] : supper.front(x, y);
  const proofOfSpot = (pixels: number) =>
    proofOf([supper], (middle) => ({ paint: spotted(pixels), size: supper.trim, bleed: 9, middle, head: 0 }));

  it('of four pixels may be the grain of a renderer, of five it is told', () => {
    expect(kinds(proofOfSpot(4))).toEqual([]);
    expect(kinds(proofOfSpot(5))).toEqual(['art-differs']);
  });
});

describe('a face of which little is left on its trim', () => {
  /** All that is drawn stands at the two ends, which a quarter turn carries off the trim; the middle is even. */
  const atEnds: Paint = (x) => (x < -32 ? [30, 30, 60] : x > 38 ? [200, 40, 40] : [240, 225, 180]);

  /** Without bleed, a turned face covers as much of its trim as the height is of the width. */
  const proofOfTurned = (h: number) => {
    const trim = { w: 90, h };
    const piece: PaintedPiece = { ...pieceOf('Supper', trim, [0, 0, 0]), bleed: 0, front: atEnds };
    return proofOf([piece], (middle) => ({ paint: atEnds, size: trim, bleed: 0, middle, head: 90 }));
  };

  it('is recognised by an even ground that is two fifths of the trim; a third could be anything', () => {
    expect(kinds(proofOfTurned(42))).toEqual(['quarter-turned']);
    expect(kinds(proofOfTurned(30))).toEqual(['art-differs']);
  });
});

describe('a face that is far from its place', () => {
  const trim = { w: 180, h: 153 };
  const CELL = 7;
  /** Squares of two colours without any order, so that only the very place tells where they belong. */
  const scattered: Paint = (x, y) => {
    const [column, row] = [Math.floor(x / CELL) + 100, Math.floor(y / CELL) + 100];
    const scatter = Math.sin(column * 12.9898 + row * 78.233) * 43758.5453;
    return scatter - Math.floor(scatter) < 0.5 ? [30, 30, 60] : [240, 225, 180];
  };
  const piece: PaintedPiece = { ...pieceOf('Supper', trim, [240, 225, 180]), bleed: 36, front: scattered };
  const proofOfShift = (mm: number) =>
    proofOf([piece], ({ x, y }) => ({
      paint: scattered,
      size: trim,
      bleed: 36,
      middle: { x: x + mm * MM, y },
      head: 0,
    }));

  it('is recognised when it is off by nine millimetres, and not when it is off by thirteen', () => {
    const near = proofOfShift(9);
    expect(kinds(near)).toEqual(['off-place']);
    expect(near.positions[0]?.shift?.right).toBeCloseTo(9, 1);
    expect(kinds(proofOfShift(13))).toEqual(['art-differs']);
  });
});
