// Small type: a single digit that became another is found, in place or a little off, and only where it is.
import { describe, expect, it } from 'vitest';
import { proveSheets } from '../../../electron/proof/proveSheets.ts';
import { HEADS } from '../../../shared/geometry/head.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { type Draw, lopsided, openShop, printSides, type Spoils } from '../../kit/printShop.ts';

const [W, H, BLEED] = [170.3, 110.7, 9];
const SHEET = { w: 700.3, h: 500.7 };

const positions: readonly Position[] = HEADS.map((head, i) => {
  const lies = head === 90 || head === 270;
  return {
    piece: 'Supper',
    face: 'front',
    head,
    trim: { x: 30.2 + (i % 2) * 230, y: 25.3 + Math.floor(i / 2) * 230, w: lies ? H : W, h: lies ? W : H },
  };
});

/** A card with a line of type of 6 pt at its foot. */
const cardWith =
  (line: string): Draw =>
  (on, pen) => {
    lopsided('Supper', [0.9, 0.8, 0.6])(on, pen);
    on.drawText(line, { x: 80, y: 12, size: 6, font: pen.regular });
  };

const shopWith = (line: string) =>
  openShop(SHEET, undefined, positions, [
    { name: 'Supper', w: W, h: H, bleed: BLEED, turned: 'head-to-head', front: cardWith(line) },
  ]);

/** Proves a sheet on which `printed` stands where the art says `wanted`; gives the positions with their faults. */
async function proofOf(wanted: string, printed: string, spoils: Spoils = () => ({})) {
  const { job, art } = await shopWith(wanted);
  const { side1 } = await printSides(await shopWith(printed), spoils);
  const proof = await proveSheets(job, { side1: { bytes: side1, page: 1 } }, art);
  if (!proof.ok) throw new Error(proof.fault.message);
  return proof.value.findings.map((f) => ('position' in f ? `${f.kind} ${f.position}` : f.kind));
}

const everywhere = positions.map((_, i) => `art-differs ${i + 1}`);
const PRICE = 'Two suppers and the dance, 33.5 each';
const TENTH_MM = 7.2 / 25.4;

describe('Type of 6 pt', () => {
  it('is right in every place and whichever way it lies', async () => {
    expect(await proofOf(PRICE, PRICE)).toEqual([]);
  });

  it('is right a tenth of a millimetre off its place', async () => {
    expect(await proofOf(PRICE, PRICE, () => ({ shift: [TENTH_MM, -TENTH_MM] }))).toEqual([]);
  });

  it('with a 3 that became an 8 is found, whichever way it lies', async () => {
    expect(await proofOf(PRICE, PRICE.replace('33.5', '38.5'))).toEqual(everywhere);
  });

  it('with a digit more or a point less is found', async () => {
    const found = expect.arrayContaining(everywhere);
    expect(await proofOf(PRICE, PRICE.replace('33.5', '335'))).toEqual(found);
    expect(await proofOf(PRICE, PRICE.replace('33.5', '33.51'))).toEqual(found);
  });

  it('with a 3 that became an 8 is found a tenth of a millimetre off its place', async () => {
    const shifted: Spoils = () => ({ shift: [TENTH_MM, -TENTH_MM] });
    expect(await proofOf(PRICE, PRICE.replace('33.5', '38.5'), shifted)).toEqual(everywhere);
  });
});
