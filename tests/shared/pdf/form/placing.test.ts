import { PDFiumLibrary } from '@hyzyla/pdfium';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HEADS, type Head, lying } from '../../../../shared/geometry/head.ts';
import type { Rect } from '../../../../shared/geometry/space.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import { type Box, type PageParts, signpost, writePages } from '../../../kit/pdfs.ts';
import { opened, type Placing, placed } from '../../../kit/placed.ts';
import {
  cutPicture,
  type Picture,
  picturesByPoppler,
  turnPicture,
  unlikeness,
} from '../../../kit/poppler.ts';

/** A page 60 × 90 units large, its picture wherever its origin is. */
function pageAt(left: number, bottom: number, more: PageParts = {}): PageParts {
  const media: Box = [left, bottom, left + 60, bottom + 90];
  return { media, drawing: signpost(media), ...more };
}

interface Case {
  readonly page: PageParts;
  readonly rotate: Head;
  /** On the page turned by `rotate`, in pt; the whole page where left out. */
  readonly box?: Rect<'art'>;
}

/** Places each case from one file of all their pages, and gives for each what it shall look like. */
async function placeAll(cases: readonly Case[]) {
  const bytes = writePages(cases.map(({ page }) => page));
  const art = await opened(bytes);
  const placings = cases.map(({ rotate, box }, i): Placing => {
    const page = art.page(i + 1);
    if (!page.ok) throw new Error(page.fault.message);
    const whole: Rect<'art'> = { x: 0, y: 0, ...lying(page.value.size, rotate) };
    return { art, page: i + 1, rotate, box: box ?? whole };
  });
  const { bytes: sheet } = await placed(...placings);
  return { bytes, sheet, boxes: placings.map(({ box }) => box!) };
}

describe('a placed page, drawn by poppler', () => {
  it('looks as the page itself does, however it is written and turned', async () => {
    const origins = [
      [0, 0],
      [-30, 45],
      [300, -200],
    ] as const;
    const cases = HEADS.flatMap((pageRotate) =>
      HEADS.flatMap((rotate) =>
        origins.flatMap(([left, bottom]) => {
          const plain: Case = { page: pageAt(left, bottom, { rotate: pageRotate }), rotate };
          const cropped = { crop: [left + 5, bottom + 10, left + 50, bottom + 75] as Box };
          const cut: Rect<'art'> = { x: 12, y: 7, w: 35, h: 48 };
          return [plain, { ...plain, page: { ...plain.page, ...cropped }, box: cut }];
        }),
      ),
    );
    const { bytes, sheet, boxes } = await placeAll(cases);
    const originals = picturesByPoppler(bytes);
    const forms = picturesByPoppler(sheet);
    expect(forms).toHaveLength(96);
    cases.forEach(({ rotate }, i) => {
      expect(unlikeness(forms[i]!, cutPicture(turnPicture(originals[i]!, rotate), boxes[i]!))).toBe(0);
    });
  });

  it('is as large as its UserUnit makes it', async () => {
    const cases = HEADS.map((rotate): Case => ({ page: pageAt(7, -9, { rotate, userUnit: 2 }), rotate }));
    const { bytes, sheet } = await placeAll(cases);
    // Poppler shows a page without its UserUnit, so it is asked for two pixels to a unit.
    const originals = picturesByPoppler(bytes, 2);
    const forms = picturesByPoppler(sheet, 1);
    cases.forEach(({ rotate }, i) => {
      expect(forms[i]).toMatchObject({ width: 120, height: 180 });
      expect(unlikeness(forms[i]!, turnPicture(originals[i]!, rotate))).toBe(0);
    });
  });

  it('looks the same with fonts, curves, patterns, gradients and pictures on it', async () => {
    const media: Box = [-30, 45, 90, 225];
    const drawing = [
      signpost(media),
      '/Pattern cs /Dots scn -20 60 60 60 re f',
      'q 50 60 30 100 re W n /Fade sh Q',
      'q 24 0 0 24 -20 140 cm /Check Do Q',
      'BT /Words 18 Tf 1 0 0 1 -25 200 Tm (Supper) Tj ET',
      '0.2 0.4 0.1 rg 20 150 m 60 150 80 190 40 200 c 10 200 0 170 20 150 c f',
    ].join('\n');
    const resources = [
      '/Font << /Words << /Type /Font /Subtype /Type1 /BaseFont /Helvetica >> >>',
      '/XObject << /Check 3 0 R >> /Pattern << /Dots 4 0 R >> /Shading << /Fade 5 0 R >>',
    ].join(' ');
    const bytes = writePages(
      [0, 90, 180, 270].map((rotate) => ({ media, drawing, resources, rotate })),
      {
        objects: {
          3: {
            dict: '/Type /XObject /Subtype /Image /Width 2 /Height 2 /ColorSpace /DeviceGray /BitsPerComponent 8',
            data: '\x00\xff\xa0\x40',
          },
          4: {
            dict: '/Type /Pattern /PatternType 1 /PaintType 1 /TilingType 1 /BBox [0 0 10 10] /XStep 10 /YStep 10 /Resources << >> /Matrix [1 0 0 1 3 4]',
            data: '0.6 0 0.6 rg 0 0 5 5 re f 0 0.5 0.5 rg 5 5 5 5 re f',
          },
          5: '<< /ShadingType 2 /ColorSpace /DeviceRGB /Coords [50 60 80 160] /Extend [true true] /Function << /FunctionType 2 /Domain [0 1] /C0 [1 0 0] /C1 [0 0 1] /N 1 >> >>',
        },
      },
    );
    const art = await opened(bytes);
    const pages = [1, 2, 3, 4];
    const { bytes: sheet } = await placed(...pages.map((page) => ({ art, page })));
    const originals = picturesByPoppler(bytes, 2);
    const forms = picturesByPoppler(sheet, 2);
    for (const i of pages.keys()) expect(unlikeness(forms[i]!, originals[i]!, 40)).toBeLessThan(0.001);
  });

  it('looks as the page itself does on random pages', async () => {
    const small = fc.integer({ min: -300, max: 300 });
    const oneCase = fc
      .record({
        left: small,
        bottom: small,
        pageRotate: fc.constantFrom(...HEADS),
        rotate: fc.constantFrom(...HEADS),
        x: fc.integer({ min: 0, max: 30 }),
        y: fc.integer({ min: 0, max: 30 }),
        w: fc.integer({ min: 5, max: 30 }),
        h: fc.integer({ min: 5, max: 30 }),
      })
      .map(({ left, bottom, pageRotate, rotate, ...box }): Case => {
        return { page: pageAt(left, bottom, { rotate: pageRotate }), rotate, box };
      });
    await fc.assert(
      fc.asyncProperty(fc.array(oneCase, { minLength: 25, maxLength: 25 }), async (cases) => {
        const { bytes, sheet, boxes } = await placeAll(cases);
        const originals = picturesByPoppler(bytes);
        picturesByPoppler(sheet).forEach((form, i) => {
          const original = turnPicture(originals[i]!, cases[i]!.rotate);
          expect(unlikeness(form, cutPicture(original, boxes[i]!))).toBe(0);
        });
      }),
      drawnCases(4),
    );
  });
});

describe('a placed page, drawn by PDFium', () => {
  let library: PDFiumLibrary;
  beforeAll(async () => {
    library = await PDFiumLibrary.init();
  });
  afterAll(() => library.destroy());

  async function picturesByPdfium(
    bytes: Uint8Array,
    scaleOf: (i: number) => number,
  ): Promise<readonly Picture[]> {
    const document = await library.loadDocument(bytes);
    const pictures: Picture[] = [];
    for (const page of document.pages()) {
      const { data, width, height } = await page.render({
        scale: scaleOf(pictures.length),
        render: 'bitmap',
      });
      pictures.push({ width, height, pixels: data.filter((_, i) => i % 4 !== 3) });
    }
    document.destroy();
    return pictures;
  }

  it('looks as the page itself does, however it is written and turned', async () => {
    const cases = HEADS.flatMap((pageRotate) =>
      HEADS.flatMap((rotate) =>
        [1, 2].map((userUnit): Case => ({ page: pageAt(-30, 45, { rotate: pageRotate, userUnit }), rotate })),
      ),
    );
    const { bytes, sheet } = await placeAll(cases);
    // PDFium too shows a page without its UserUnit.
    const originals = await picturesByPdfium(bytes, (i) => cases[i]!.page.userUnit!);
    const forms = await picturesByPdfium(sheet, () => 1);
    cases.forEach(({ rotate, page }, i) => {
      const form = forms[i]!;
      expect(Math.min(form.width, form.height)).toBe(60 * page.userUnit!);
      expect(unlikeness(form, turnPicture(originals[i]!, rotate))).toBe(0);
    });
  });
});
