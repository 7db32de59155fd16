import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS } from '../../../../shared/geometry/head.ts';
import type { Rect } from '../../../../shared/geometry/space.ts';
import { apply } from '../../../../shared/geometry/transform.ts';
import type { ArtPage } from '../../../../shared/pdf/art/artPage.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import { type Box, CARD, type PageParts, writeObjects, writePages } from '../../../kit/pdfs.ts';
import { opened } from '../../../kit/placed.ts';

async function pageOf(parts: PageParts, root = ''): Promise<ArtPage> {
  const art = await opened(writePages([parts], { root }), { name: 'supper.pdf' });
  const page = art.page(1);
  if (!page.ok) throw new Error(page.fault.message);
  return page.value;
}

async function refusal(parts: PageParts): Promise<unknown> {
  const page = (await opened(writePages([parts]), { name: 'supper.pdf' })).page(1);
  return page.ok ? undefined : page.fault;
}

const rect = (x: number, y: number, w: number, h: number): Rect<'art'> => ({ x, y, w, h });

describe('the boxes of a page', () => {
  it('are all its media box when it gives no other', async () => {
    const page = await pageOf({ media: [0, 0, 378, 522] });
    const whole = rect(0, 0, 378, 522);
    expect(page.boxes).toEqual({ media: whole, crop: whole, bleed: whole, trim: whole, art: whole });
    expect(page.given).toEqual({ crop: false, bleed: false, trim: false, art: false });
    expect(page).toMatchObject({
      art: 'supper.pdf',
      number: 1,
      size: { w: 378, h: 522 },
      rotate: 0,
      userUnit: 1,
    });
    expect(page.notices).toEqual([]);
  });

  it('fall back to the crop box, and that to the media box', async () => {
    const page = await pageOf({ media: [0, 0, 400, 600], crop: [10, 20, 390, 580] });
    const seen = rect(10, 20, 380, 560);
    expect(page.boxes).toEqual({
      media: rect(0, 0, 400, 600),
      crop: seen,
      bleed: seen,
      trim: seen,
      art: seen,
    });
    expect(page.given).toEqual({ crop: true, bleed: false, trim: false, art: false });
  });

  it('are taken as given, from any two opposite corners, with the lower left of the media box as origin', async () => {
    const page = await pageOf({
      media: [310, 450, -90, -50],
      crop: [300, -40, -80, 440],
      bleed: [-60, 430, 290, -30],
      trim: [-50, -20, 280, 420],
      art: [-40, -10, 270, 410],
    });
    expect(page.boxes).toEqual({
      media: rect(0, 0, 400, 500),
      crop: rect(10, 10, 380, 480),
      bleed: rect(30, 20, 350, 460),
      trim: rect(40, 30, 330, 440),
      art: rect(50, 40, 310, 420),
    });
    expect(page.given).toEqual({ crop: true, bleed: true, trim: true, art: true });
  });

  it('end at the media box', async () => {
    const page = await pageOf({
      media: [0, 0, 378, 522],
      trim: [-9, 9, 369, 600],
      bleed: [-1, -1, 900, 900],
    });
    expect(page.boxes.trim).toEqual(rect(0, 9, 369, 513));
    expect(page.boxes.bleed).toEqual(rect(0, 0, 378, 522));
  });

  it('count as not given when they lie off the media box or have no area', async () => {
    const page = await pageOf({
      media: CARD,
      crop: [400, 600, 500, 700],
      trim: [9, 9, 9, 500],
      bleed: [9, 500, 300, 500],
    });
    expect(page.given).toEqual({ crop: false, bleed: false, trim: false, art: false });
    expect(page.boxes.trim).toEqual(page.boxes.media);
  });

  it('count as not given when they are no four numbers', async () => {
    for (const trim of ['[0 0 1]', '[0 0 10 10 10]', '[0 0 10 10 /A]', '[0 0 /A 10]', '(none)', '77 0 R']) {
      const page = await pageOf({ media: CARD, more: `/TrimBox ${trim}` });
      expect(page.given.trim).toBe(false);
    }
  });

  it('are inherited as media box, crop box and Rotate, but not as trim box or UserUnit', async () => {
    const root =
      '/MediaBox [0 0 378 522] /CropBox [9 9 369 513] /Rotate 90 /TrimBox [20 20 30 30] /UserUnit 2';
    const heir = await pageOf({}, root);
    expect(heir).toMatchObject({ size: { w: 522, h: 378 }, rotate: 90, userUnit: 1 });
    expect(heir.boxes.trim).toEqual(rect(9, 9, 504, 360));
    expect(heir.given).toMatchObject({ crop: true, trim: false });
    const own = await pageOf({ media: [0, 0, 100, 200], rotate: 0 }, root);
    expect(own).toMatchObject({ size: { w: 100, h: 200 }, rotate: 0 });
  });

  it('may be references, and references to numbers', async () => {
    const art = await opened(
      writePages([{ more: '/MediaBox 3 0 R /Rotate 5 0 R' }], {
        objects: { 3: '[0 0 4 0 R 522]', 4: '378', 5: '-90' },
      }),
    );
    expect(art.page(1)).toMatchObject({ ok: true, value: { size: { w: 522, h: 378 }, rotate: 270 } });
  });
});

describe('Rotate and UserUnit', () => {
  // The lower left and the upper right corner of the media box [100 200 400 700], by where a viewer shows them.
  it.each([
    [0, rect(10, 20, 30, 40), [0, 0], [300, 500]],
    [90, rect(20, 260, 40, 30), [0, 300], [500, 0]],
    [180, rect(260, 440, 30, 40), [300, 500], [0, 0]],
    [270, rect(440, 10, 40, 30), [500, 0], [0, 300]],
  ])('turn a page clockwise: %i degrees', async (rotate, trim, lowerLeft, upperRight) => {
    const page = await pageOf({ media: [100, 200, 400, 700], trim: [110, 220, 140, 260], rotate });
    expect(page.boxes.trim).toEqual(trim);
    expect(apply(page.toArt, { x: 100, y: 200 })).toEqual({ x: lowerLeft[0], y: lowerLeft[1] });
    expect(apply(page.toArt, { x: 400, y: 700 })).toEqual({ x: upperRight[0], y: upperRight[1] });
    expect(page.rotate).toBe(rotate);
  });

  it.each([
    [360, 0],
    [450, 90],
    [-90, 270],
    [-180, 180],
    [720, 0],
  ])('go round: %i is %i', async (rotate, quarter) => {
    expect((await pageOf({ media: CARD, rotate })).rotate).toBe(quarter);
  });

  it('are set right in words when they are impossible', async () => {
    const page = await pageOf({ media: CARD, rotate: 45, userUnit: -2 });
    expect(page).toMatchObject({ rotate: 0, userUnit: 1, size: { w: 378, h: 522 } });
    expect(page.notices).toEqual([
      'The Rotate of page 1 of supper.pdf is 45, no quarter turn; it was taken as 0.',
      'The UserUnit of page 1 of supper.pdf is -2; it was taken as 1.',
    ]);
    const none = await pageOf({ media: CARD, userUnit: 0 });
    expect(none.notices).toEqual(['The UserUnit of page 1 of supper.pdf is 0; it was taken as 1.']);
  });

  it('count together: a unit of 2 pt doubles the page and all its boxes', async () => {
    const page = await pageOf({ media: [-5, 5, 95, 205], trim: [0, 10, 90, 200], rotate: 90, userUnit: 2 });
    expect(page).toMatchObject({ size: { w: 400, h: 200 }, userUnit: 2 });
    expect(page.boxes.trim).toEqual(rect(10, 10, 380, 180));
  });
});

describe('a page that cannot be used', () => {
  it('has no size', async () => {
    const sizeless = {
      code: 'art-size-unclear',
      message: 'There is no size in page 1 of supper.pdf: its MediaBox is missing or has no area.',
      remedy: 'Export the page again from the program that made it.',
      where: 'supper.pdf',
    };
    expect(await refusal({})).toEqual(sizeless);
    expect(await refusal({ media: [0, 0, 0, 100] })).toEqual(sizeless);
    expect(await refusal({ media: [0, 7, 100, 7] })).toEqual(sizeless);
  });

  it('is 200 in long, either way, also by its UserUnit', async () => {
    const tooLarge = (size: string) => ({
      code: 'art-too-large',
      message: `The size of page 1 of supper.pdf is ${size}; a side of 200 in or more cannot be laid out.`,
      remedy: 'Export the page at the true size of the piece, not at a scale or on a pasteboard.',
      where: 'supper.pdf',
    });
    expect(await refusal({ media: [0, 0, 14400, 14400] })).toEqual(tooLarge('200 × 200 in'));
    expect(await refusal({ media: [0, 0, 14400, 72] })).toEqual(tooLarge('200 × 1 in'));
    expect(await refusal({ media: [0, 0, 72, 14400] })).toEqual(tooLarge('1 × 200 in'));
    expect(await refusal({ media: [0, 0, 72, 7200], userUnit: 2 })).toEqual(tooLarge('2 × 200 in'));
    expect(await refusal({ media: [0, 0, 14399, 14399] })).toBeUndefined();
  });
});

it('agrees with pdfinfo on every box of random pages', async () => {
  const from = (least: number, most: number) => fc.integer({ min: least, max: most });
  const box = fc.option(fc.tuple(from(-40, 90), from(-40, 90), from(110, 340), from(110, 340)), {
    nil: undefined,
  });
  const pages = fc.array(
    fc.record({
      media: fc.tuple(from(-30, 0), from(-30, 0), from(200, 300), from(200, 300)),
      // One that leaves the media box is cut off in another way by pdfinfo, so it stays within.
      crop: fc.option(fc.tuple(from(110, 190), from(110, 190), from(10, 90), from(10, 90)), {
        nil: undefined,
      }),
      bleed: box,
      trim: box,
      art: box,
    }),
    { minLength: 30, maxLength: 30 },
  );
  await fc.assert(
    fc.asyncProperty(pages, async (parts) => {
      const bytes = writePages(parts as readonly PageParts[]);
      const art = await opened(bytes);
      const theirs = readPdfInfo(bytes);
      for (const i of parts.keys()) {
        const page = art.page(i + 1);
        if (!page.ok) throw new Error(page.fault.message);
        const [left, bottom] = theirs[i]!.media;
        const moved = ([x1, y1, x2, y2]: Box) => rect(x1 - left, y1 - bottom, x2 - x1, y2 - y1);
        for (const name of ['media', 'crop', 'bleed', 'trim', 'art'] as const) {
          expect(page.value.boxes[name]).toEqual(moved(theirs[i]![name]));
        }
      }
    }),
    drawnCases(5),
  );
});

function readPdfInfo(bytes: Uint8Array): readonly Record<keyof ArtPage['boxes'], Box>[] {
  const told = execFileSync('pdfinfo', ['-box', '-f', '1', '-l', '999', '-'], {
    input: bytes,
    encoding: 'utf8',
  });
  const pages: Record<string, Box>[] = [];
  for (const [, n, name, numbers] of told.matchAll(/Page\s+(\d+) (\w+)Box:\s+(.*)/g)) {
    const [x1, y1, x2, y2] = numbers!.trim().split(/\s+/).map(Number);
    const i = Number(n) - 1;
    pages[i] = { ...pages[i], [name!.toLowerCase()]: [x1!, y1!, x2!, y2!] };
  }
  return pages as Record<keyof ArtPage['boxes'], Box>[];
}

it('finds each corner of random pages where it was put', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...HEADS),
      fc.constantFrom(1, 0.5, 2, 1.25),
      fc.integer({ min: -500, max: 500 }),
      fc.integer({ min: -500, max: 500 }),
      async (rotate, userUnit, left, bottom) => {
        const page = await pageOf({ media: [left, bottom, left + 120, bottom + 80], rotate, userUnit });
        const u = userUnit;
        const corners = {
          0: [0, 0],
          90: [0, 120 * u],
          180: [120 * u, 80 * u],
          270: [80 * u, 0],
        } as const;
        const [x, y] = corners[rotate];
        const lowerLeft = apply(page.toArt, { x: left, y: bottom });
        expect(lowerLeft.x).toBeCloseTo(x, 9);
        expect(lowerLeft.y).toBeCloseTo(y, 9);
        expect(page.size.w).toBeCloseTo((rotate % 180 === 0 ? 120 : 80) * u, 9);
      },
    ),
    drawnCases(50),
  );
});

it('reads a file whose page stands where its tree should', async () => {
  const art = await opened(
    writeObjects({ 1: '<< /Type /Catalog /Pages 2 0 R >>', 2: '<< /Type /Page /MediaBox [0 0 10 20] >>' }),
  );
  expect(art.page(1)).toMatchObject({ ok: true, value: { size: { w: 10, h: 20 } } });
});
