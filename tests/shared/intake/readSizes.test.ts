import { describe, expect, it } from 'vitest';
import { readSizes } from '../../../shared/intake/readSizes.ts';
import { POINTS_PER, type Unit } from '../../../shared/units/length.ts';
import type { PageParts } from '../../kit/pdfs.ts';
import { plainPage, takenFile } from '../../kit/takenFile.ts';

async function read(parts: PageParts, unit: Unit = 'in'): Promise<readonly string[]> {
  const [page] = (await takenFile('card.pdf', parts)).pages;
  if (page === undefined) throw new Error('The file has a page');
  return readSizes(page, unit).map(
    ({ trim, bleed, from }) => `${trim[0].typed} x ${trim[1].typed}, ${bleed.typed}, ${from}`,
  );
}

const mm = POINTS_PER.mm;

describe('a page with a trim of its own', () => {
  it('is trimmed there, with the usual bleed that the art reaches', async () => {
    expect(await read({ media: [0, 0, 378, 522], trim: [9, 9, 369, 513] })).toEqual([
      '5 in x 7 in, 1/8 in, its TrimBox',
    ]);
    expect(await read({ media: [0, 0, 450, 600], trim: [45, 45, 405, 549] })).toEqual([
      '5 in x 7 in, 1/8 in, its TrimBox',
    ]);
  });

  it('has as little bleed as its shortest side has', async () => {
    expect(await read({ media: [0, 0, 450, 600], trim: [45, 4.6, 405, 508.6] })).toEqual([
      '5 in x 7 in, 1/16 in, its TrimBox',
    ]);
    expect(await read({ media: [0, 0, 450, 600], trim: [45, 0, 405, 504] })).toEqual([
      '5 in x 7 in, 0 in, its TrimBox',
    ]);
  });

  it('bleeds no farther than its BleedBox: beyond it are marks', async () => {
    const parts: PageParts = { media: [0, 0, 450, 600], trim: [45, 45, 405, 549], bleed: [39, 39, 411, 555] };
    expect(await read(parts)).toEqual(['5 in x 7 in, 1/16 in, its TrimBox']);
  });

  it('of no usual size is written to a thousandth of an inch', async () => {
    expect(await read({ media: [0, 0, 300, 300], trim: [20, 20, 220, 153.33] })).toEqual([
      '2.778 in x 1.852 in, 1/8 in, its TrimBox',
    ]);
  });
});

describe('a page without a trim', () => {
  it('is read as a usual size with a usual bleed around it', async () => {
    expect(await read(plainPage(378, 522))).toEqual([
      '5 in x 7 in, 1/8 in, the page, with 1/8 in of bleed around it',
    ]);
    expect(await read(plainPage(154 * mm, 111 * mm), 'mm')).toEqual([
      '148 mm x 105 mm, 3 mm, the page, with 3 mm of bleed around it',
    ]);
  });

  it('of a usual size is the piece itself', async () => {
    expect(await read(plainPage(432, 288))).toEqual(['6 in x 4 in, 0 in, the page, without bleed']);
  });

  it('that can be two usual sizes is read both ways, with bleed first', async () => {
    // 3 x 3 in less 1/4 in of bleed on every side is 2.5 x 2.5 in: both are tags.
    expect(await read(plainPage(216, 216))).toEqual([
      '2.5 in x 2.5 in, 1/4 in, the page, with 1/4 in of bleed around it',
      '3 in x 3 in, 0 in, the page, without bleed',
    ]);
  });

  it('of no usual size may be the piece, or have either of the usual bleeds', async () => {
    expect(await read(plainPage(250, 250))).toEqual([
      '3.472 in x 3.472 in, 0 in, the page, without bleed',
      '3.222 in x 3.222 in, 1/8 in, the page, with 1/8 in of bleed around it',
      '3.347 in x 3.347 in, 1/16 in, the page, with 1/16 in of bleed around it',
    ]);
  });
});
