// What each threshold of the proof protects: a case drawn just below it, and one just above.
import { describe, expect, it } from 'vitest';
import type { Size } from '../../../shared/geometry/space.ts';
import type { ProofReport } from '../../../shared/proof/finding.ts';
import { prove } from '../../../shared/proof/prove.ts';
import {
  lopsidedPaint,
  type Paint,
  type PaintedPiece,
  type Printed,
  pagesOf,
  printedSight,
  proofPieces,
} from '../../kit/painted.ts';

/** At 80 pixels to the inch a pixel is 0.9 pt, and these trims are whole pixels. */
const DPI = 80;
const PIXEL = 0.9;

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
  const proof = prove(job, { side1: printedSight(sheet, [printed(middle)]) }, pagesOf(pieces), { dpi: DPI });
  for (;;) {
    const next = proof.next();
    if (next.done) return next.value;
  }
}

const kinds = ({ findings }: ProofReport) => findings.map(({ kind }) => kind);

describe('a spot that the art does not have', () => {
  const supper = pieceOf('Supper', { w: 90, h: 63 }, [240, 225, 180]);

  /** So many pixels of another colour, side by side, far from all that is drawn. */
  const spotted =
    (pixels: number): Paint =>
    (x, y) =>
      x > 0 && x < pixels * PIXEL && y > 0 && y < PIXEL ? [30, 30, 60] : supper.front(x, y);
  const proofOfSpot = (pixels: number) =>
    proofOf([supper], (middle) => ({ paint: spotted(pixels), size: supper.trim, bleed: 9, middle, head: 0 }));

  it('of five pixels may be the grain of a renderer, of six it is told', () => {
    expect(kinds(proofOfSpot(5))).toEqual([]);
    expect(kinds(proofOfSpot(6))).toEqual(['art-differs']);
  });
});
