import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenDocument, Renderer } from '../../../electron/proof/renderer.ts';
import { chain } from '../../../shared/geometry/transform.ts';
import type { Affine, PageSource } from '../../../shared/proof/pageSource.ts';
import type { Picture } from '../../../shared/proof/picture.ts';
import { type PageParts, pack, signpost, writePages } from '../../kit/pdfs.ts';
import { picturesByPoppler, unlikeness } from '../../kit/poppler.ts';
import { throughQpdf } from '../../kit/qpdf.ts';

let renderer: Renderer;
beforeAll(async () => {
  renderer = await Renderer.start();
});
afterAll(() => renderer.close());

function opened(bytes: Uint8Array): OpenDocument {
  const document = renderer.open(bytes);
  if (typeof document === 'string') throw new Error(`It did not open: ${document}`);
  return document;
}

const onlyPage = (page: PageParts, objects = {}) => opened(writePages([page], { objects })).page(1)!;

/** All of a source, `scale` pixels to the pt. */
function whole({ size, render }: PageSource, scale = 1): Picture {
  const matrix: Affine = { a: scale, b: 0, c: 0, d: -scale, e: 0, f: size.h * scale };
  return render(matrix, Math.round(size.w * scale), Math.round(size.h * scale));
}

const colourAt = ({ pixels, width }: Picture, x: number, y: number) => [
  ...pixels.subarray((y * width + x) * 3, (y * width + x) * 3 + 3),
];

const WHITE = [255, 255, 255];
const RED = [255, 0, 0];

describe('The renderer', () => {
  it('renders a page as another renderer shows it', () => {
    const bytes = writePages([{ media: [0, 0, 120, 90], drawing: signpost([0, 0, 120, 90]) }]);
    const [byPoppler] = picturesByPoppler(bytes, 2);
    expect(unlikeness(whole(opened(bytes).page(1)!.source, 2), byPoppler!)).toBeLessThan(0.001);
  });

  it('renders a page of a broken size without stretching it', () => {
    const square = '1 0 0 rg 500 1000 200 300 re f';
    const { source } = onlyPage({ media: [0, 0, 1000.7, 2000.9], drawing: square });
    expect(source.size.w).toBeCloseTo(1000.7, 3);
    expect(source.size.h).toBeCloseTo(2000.9, 3);
    const picture = whole(source);
    expect(colourAt(picture, 501, 2001 - 1300)).toEqual(RED);
    expect(colourAt(picture, 698, 2001 - 1003)).toEqual(RED);
    expect(colourAt(picture, 498, 2001 - 1150)).toEqual(WHITE);
    expect(colourAt(picture, 701, 2001 - 1150)).toEqual(WHITE);
    expect(colourAt(picture, 600, 2001 - 998)).toEqual(WHITE);
    expect(colourAt(picture, 600, 2001 - 1303)).toEqual(WHITE);
  });

  it('renders any part of a page, turned, mirrored or enlarged', () => {
    const { source } = onlyPage({ media: [0, 0, 120, 90], drawing: signpost([0, 0, 120, 90]) });
    // The lower left corner is red: looked at alone, then brought to the upper right by half a turn.
    const corner: Affine = { a: 4, b: 0, c: 0, d: -4, e: 0, f: 40 };
    expect(colourAt(source.render(corner, 40, 40), 20, 20)).toEqual(RED);
    const halfTurn: Affine = { a: -1, b: 0, c: 0, d: -1, e: 40, f: 40 };
    const turned = source.render(chain(corner, halfTurn), 80, 80);
    expect(colourAt(turned, 20, 20)).toEqual(RED);
    expect(colourAt(turned, 60, 20)).toEqual(WHITE);
  });

  it('shows what is larger than the crop box, and says what the crop box shows', () => {
    const page = onlyPage({
      media: [-10, 5, 110, 95],
      crop: [20, 20, 70, 60],
      drawing: '1 0 0 rg -10 5 20 20 re f',
    });
    expect(page.shown).toEqual({ w: 50, h: 40 });
    expect(page.source.size).toEqual({ w: 120, h: 90 });
    expect(colourAt(whole(page.source), 2, 87)).toEqual(RED);
  });

  it('shows a page as its Rotate turns it', () => {
    const page = onlyPage({ media: [0, 0, 120, 90], rotate: 90, drawing: '1 0 0 rg 0 0 20 10 re f' });
    expect(page.source.size).toEqual({ w: 90, h: 120 });
    // Clockwise, the lower left comes to the upper left.
    expect(colourAt(whole(page.source), 5, 10)).toEqual(RED);
    expect(colourAt(whole(page.source), 15, 10)).toEqual(WHITE);
  });

  it('shows annotations that print, and none that do not', () => {
    const appearance = pack('1 0 0 rg 0 0 20 20 re f', '/Type /XObject /Subtype /Form /BBox [0 0 20 20]');
    const stamp = (x: number, flags: number, look = '/AP << /N 3 0 R >>') =>
      `<< /Type /Annot /Subtype /Stamp /Rect [${x} 10 ${x + 20} 30] /F ${flags} ${look} >>`;
    const square = '<< /Type /Annot /Subtype /Square /Rect [100 10 115 30] /F 4 /C [0 0 1] /IC [0 0 1] >>';
    const { source } = onlyPage(
      {
        media: [0, 0, 120, 90],
        drawing: '',
        more: `/Annots [${stamp(10, 4)} ${stamp(40, 0)} ${stamp(70, 6)} ${square}]`,
      },
      { 3: appearance },
    );
    const picture = whole(source);
    expect([20, 50, 80, 108].map((x) => colourAt(picture, x, 70))).toEqual([RED, WHITE, WHITE, WHITE]);
  });

  it('says whether a file needs a password or is damaged, and which pages it has', () => {
    const bytes = writePages([{ media: [0, 0, 120, 90] }, { media: [0, 0, 120, 90] }]);
    expect(renderer.open(throughQpdf(bytes, '--encrypt', 'reader', 'owner', '256', '--'))).toBe('locked');
    expect(renderer.open(new TextEncoder().encode('no PDF at all'))).toBe('damaged');
    expect(renderer.open(new Uint8Array())).toBe('damaged');
    const document = opened(bytes);
    expect(document.pages).toBe(2);
    expect(document.page(2)).toBeDefined();
    expect(document.page(2)).toBe(document.page(2));
    expect(document.page(3)).toBeUndefined();
    expect(document.page(0)).toBeUndefined();
  });

  it('can be closed and started again as often as there are proofs', async () => {
    const bytes = writePages([{ media: [0, 0, 120, 90], drawing: signpost([0, 0, 120, 90]) }]);
    const first = whole(opened(bytes).page(1)!.source);
    for (let proof = 0; proof < 5; proof++) {
      const another = await Renderer.start();
      const document = another.open(bytes);
      expect(typeof document !== 'string' && whole(document.page(1)!.source)).toEqual(first);
      another.close();
    }
  });
});
