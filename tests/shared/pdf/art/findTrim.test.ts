import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS, type Head, lying } from '../../../../shared/geometry/head.ts';
import { findTrim, type TrimWish } from '../../../../shared/pdf/art/findTrim.ts';
import { FIT_TOLERANCE_PT } from '../../../../shared/pdf/art/fit.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import { type Box, type PageParts, writePages } from '../../../kit/pdfs.ts';
import { opened } from '../../../kit/placed.ts';

/** A card of 5 × 7 in with 1/8 in of bleed. */
const WISH: TrimWish = { trim: { w: 360, h: 504 }, bleed: 9 };

async function find(parts: PageParts, wish: TrimWish = WISH) {
  const page = (await opened(writePages([parts]), { name: 'supper.pdf' })).page(1);
  if (!page.ok) throw new Error(page.fault.message);
  return findTrim(page.value, wish);
}

async function trimOf(parts: PageParts, wish: TrimWish = WISH) {
  const found = await find(parts, wish);
  if (!found.ok) throw new Error(found.fault.message);
  return found.value;
}

async function faultOf(parts: PageParts, wish: TrimWish = WISH) {
  const found = await find(parts, wish);
  if (found.ok) throw new Error(`It was found: ${found.value.said}`);
  expect(found.fault.where).toBe('supper.pdf');
  return found.fault;
}

const evenly = (reach: number) => ({ left: reach, right: reach, top: reach, bottom: reach });

describe('a page with a TrimBox', () => {
  it('is trimmed by it', async () => {
    expect(await trimOf({ media: [0, 0, 450, 600], trim: [30, 20, 390, 524] })).toEqual({
      trim: { x: 30, y: 20, w: 360, h: 504 },
      bleedReach: { left: 30, right: 60, top: 76, bottom: 20 },
      said: 'The trim of page 1 of supper.pdf is its TrimBox.',
    });
  });

  it('bleeds as far as its BleedBox, beyond which are marks', async () => {
    const found = await trimOf({
      media: [0, 0, 450, 600],
      trim: [30, 20, 390, 524],
      bleed: [21, 10, 400, 535],
    });
    expect(found.bleedReach).toEqual({ left: 9, right: 10, top: 11, bottom: 10 });
  });

  it('has no bleed when its BleedBox ends at the trim', async () => {
    const found = await trimOf({
      media: [0, 0, 450, 600],
      trim: [30, 20, 390, 524],
      bleed: [30, 20, 390, 524],
    });
    expect(found.bleedReach).toEqual(evenly(0));
  });

  it('bleeds to the edge of the page when its BleedBox does not hold the trim', async () => {
    const found = await trimOf({
      media: [0, 0, 450, 600],
      trim: [30, 20, 390, 524],
      bleed: [40, 20, 390, 524],
    });
    expect(found.bleedReach).toEqual({ left: 30, right: 60, top: 76, bottom: 20 });
  });

  it('may differ by a quarter of a millimetre, which is halved, and by no more', async () => {
    const larger = await trimOf({
      media: [0, 0, 450, 600],
      trim: [30, 20, 390 + FIT_TOLERANCE_PT - 0.001, 524],
    });
    expect(larger.trim).toMatchObject({ w: 360, h: 504, y: 20 });
    expect(larger.trim.x).toBeCloseTo(30 + FIT_TOLERANCE_PT / 2, 3);
    expect(FIT_TOLERANCE_PT).toBeCloseTo(0.7087, 4);
    const fault = await faultOf({
      media: [0, 0, 450, 600],
      trim: [30, 20, 390 + FIT_TOLERANCE_PT + 0.001, 524],
    });
    expect(fault.code).toBe('art-size-wrong');
    const taller = await faultOf({
      media: [0, 0, 450, 600],
      trim: [30, 20, 390, 524 + FIT_TOLERANCE_PT + 0.001],
    });
    expect(taller.code).toBe('art-size-wrong');
  });

  it('of another size is wrong, whatever the size of the page', async () => {
    expect(await faultOf({ media: [0, 0, 378, 522], trim: [9, 9, 297, 441] })).toEqual({
      code: 'art-size-wrong',
      message:
        'The TrimBox of page 1 of supper.pdf is 4 × 6 in (101.6 × 152.4 mm), but the brief wants a trim of 5 × 7 in (127 × 177.8 mm).',
      remedy:
        'Export the page at the size of the brief, or correct "trim" in the brief; art is never scaled.',
      where: 'supper.pdf',
    });
  });

  it('that fits only when turned is a question', async () => {
    const fault = await faultOf({ media: [0, 0, 600, 450], trim: [30, 20, 534, 380] });
    expect(fault).toEqual({
      code: 'art-size-unclear',
      message:
        'Which way is the head of page 1 of supper.pdf? The brief wants a trim of 5 × 7 in (127 × 177.8 mm), but its TrimBox is 7 × 5 in (177.8 × 127 mm), which fits only when turned.',
      remedy:
        'Write "rotate": 90 at that face of the brief if a quarter turn counter-clockwise brings its head up, or "rotate": 270 if a quarter turn clockwise does.',
      where: 'supper.pdf',
    });
  });

  it('that only repeats the page counts as none', async () => {
    for (const [crop, trim] of [
      [undefined, [0, 0, 378, 522]],
      [
        [0, 0, 378, 522],
        [0, 0, 378, 522],
      ],
    ] as const) {
      const page = { media: [0, 0, 378, 522] as Box, trim: trim as unknown as Box };
      const found = await trimOf(crop === undefined ? page : { ...page, crop: crop as unknown as Box });
      expect(found.trim).toEqual({ x: 9, y: 9, w: 360, h: 504 });
      expect(found.said).toBe(
        'The page is the trim and a bleed of 0.125 in (3.18 mm) on every side. Its TrimBox only repeats the page, so it was not counted.',
      );
    }
  });

  it('that repeats a crop box within a larger media box counts as none', async () => {
    const found = await trimOf({
      media: [0, 0, 600, 700],
      crop: [50, 60, 428, 582],
      trim: [50, 60, 428, 582],
    });
    expect(found.trim).toEqual({ x: 59, y: 69, w: 360, h: 504 });
    expect(found.said).toMatch(/^The crop box is the trim and a bleed .* only repeats the page/);
  });

  it('of the right size is taken even where it repeats the page', async () => {
    const found = await trimOf({ media: [0, 0, 360, 504], trim: [0, 0, 360, 504] });
    expect(found).toMatchObject({ trim: { x: 0, y: 0 }, bleedReach: evenly(0) });
    expect(found.said).toBe('The trim of page 1 of supper.pdf is its TrimBox.');
  });
});

describe('a page without a TrimBox', () => {
  it('is the trim and its bleeds', async () => {
    expect(await trimOf({ media: [-9, -9, 369, 513] })).toEqual({
      trim: { x: 9, y: 9, w: 360, h: 504 },
      bleedReach: evenly(9),
      said: 'The page is the trim and a bleed of 0.125 in (3.18 mm) on every side.',
    });
  });

  it('is the trim, without bleed', async () => {
    expect(await trimOf({ media: [0, 0, 360, 504] })).toEqual({
      trim: { x: 0, y: 0, w: 360, h: 504 },
      bleedReach: evenly(0),
      said: 'The page is the trim, without bleed.',
    });
    const wished = { ...WISH, bleed: 0 };
    expect((await trimOf({ media: [0, 0, 360, 504] }, wished)).said).toBe(
      'The page is the trim, without bleed.',
    );
  });

  it('may differ by a quarter of a millimetre and no more', async () => {
    for (const [w, h] of [
      [FIT_TOLERANCE_PT, 0],
      [-FIT_TOLERANCE_PT, 0],
      [0, FIT_TOLERANCE_PT],
      [0, -FIT_TOLERANCE_PT],
    ] as const) {
      const found = await trimOf({ media: [0, 0, 378 + 0.99 * w, 522 + 0.99 * h] });
      expect(found.trim.x).toBeCloseTo(9 + 0.495 * w, 9);
      expect(found.trim.y).toBeCloseTo(9 + 0.495 * h, 9);
      expect((await find({ media: [0, 0, 378 + 1.01 * w, 522 + 1.01 * h] })).ok).toBe(false);
    }
  });

  it('with 3 mm of bleed is not one with 1/8 in', async () => {
    const bleed = (3 * 72) / 25.4;
    const media: Box = [0, 0, 360 + 2 * bleed, 504 + 2 * bleed];
    expect((await faultOf({ media })).code).toBe('art-size-wrong');
    expect((await trimOf({ media }, { ...WISH, bleed })).bleedReach.left).toBeCloseTo(bleed, 9);
  });

  it('that is neither is wrong, and both sizes are said', async () => {
    const remedy =
      'Export the page at the size of the brief with its bleed, or correct "trim" and "bleed" in the brief; art is never scaled.';
    expect(await faultOf({ media: [0, 0, 288, 432] })).toEqual({
      code: 'art-size-wrong',
      message:
        'The size of page 1 of supper.pdf is 4 × 6 in (101.6 × 152.4 mm), but the brief wants a trim of 5 × 7 in (127 × 177.8 mm), which is 5.25 × 7.25 in (133.35 × 184.15 mm) with its bleeds.',
      remedy,
      where: 'supper.pdf',
    });
    const bare = await faultOf({ media: [0, 0, 288, 432] }, { ...WISH, bleed: 0 });
    expect(bare.message).toBe(
      'The size of page 1 of supper.pdf is 4 × 6 in (101.6 × 152.4 mm), but the brief wants a trim of 5 × 7 in (127 × 177.8 mm).',
    );
  });

  it('that has room one way only is wrong', async () => {
    expect((await faultOf({ media: [0, 0, 600, 504] })).code).toBe('art-size-wrong');
    expect((await faultOf({ media: [0, 0, 360, 700] })).code).toBe('art-size-wrong');
  });

  it('that is larger than trim and bleeds is a question', async () => {
    expect(await faultOf({ media: [0, 0, 612, 792] })).toEqual({
      code: 'art-size-unclear',
      message:
        'Where is the trim on page 1 of supper.pdf? The page is 8.5 × 11 in (215.9 × 279.4 mm), larger than a trim of 5 × 7 in (127 × 177.8 mm), which is 5.25 × 7.25 in (133.35 × 184.15 mm) with its bleeds, and gives no TrimBox.',
      remedy:
        'Export it with a TrimBox, or write "trimAt": [x, y] at that face of the brief: where the lower left corner of the trim lies, measured from the lower left corner of the page. If its head is not up, add "rotate": 90, 180 or 270.',
      where: 'supper.pdf',
    });
    expect((await faultOf({ media: [0, 0, 612, 522] })).code).toBe('art-size-unclear');
    expect((await faultOf({ media: [0, 0, 378, 792] })).code).toBe('art-size-unclear');
  });

  it('that fits only when turned is a question, with bleeds and without', async () => {
    for (const media of [
      [0, 0, 522, 378],
      [0, 0, 504, 360],
    ] as const) {
      const fault = await faultOf({ media });
      expect(fault.code).toBe('art-size-unclear');
      expect(fault.message).toMatch(
        /^Which way is the head .* but it is 7(\.25)? × 5(\.25)? in .*only when turned\.$/,
      );
    }
  });

  it('turned by the brief although it fits as it is, is a question too', async () => {
    const fault = await faultOf({ media: [0, 0, 378, 522] }, { ...WISH, rotate: 270 });
    expect(fault.code).toBe('art-size-unclear');
    expect(fault.message).toContain('but turned 270 degrees it is 7.25 × 5.25 in');
    expect(fault.remedy).toBe(
      'Leave out "rotate" at that face of the brief if its head is up as it is, or write "rotate": 180 if it stands on its head.',
    );
  });
});

describe('a page whose crop box is not its media box', () => {
  it('is read by the crop box', async () => {
    const found = await trimOf({ media: [0, 0, 612, 792], crop: [100, 200, 478, 722] });
    expect(found.trim).toEqual({ x: 109, y: 209, w: 360, h: 504 });
    expect(found.said).toBe('The crop box is the trim and a bleed of 0.125 in (3.18 mm) on every side.');
    const tight = await trimOf({ media: [0, 0, 612, 792], crop: [100, 200, 460, 704] });
    expect(tight.trim).toEqual({ x: 100, y: 200, w: 360, h: 504 });
    expect(tight.said).toBe('The crop box is the trim.');
    expect(tight.bleedReach).toEqual({ left: 100, right: 152, top: 88, bottom: 200 });
  });

  it('is read by the media box', async () => {
    const found = await trimOf({ media: [0, 0, 378, 522], crop: [20, 20, 300, 500] });
    expect(found.trim).toEqual({ x: 9, y: 9, w: 360, h: 504 });
    expect(found.said).toBe('The media box is the trim and a bleed of 0.125 in (3.18 mm) on every side.');
    const tight = await trimOf({ media: [0, 0, 360, 504], crop: [20, 20, 300, 500] });
    expect(tight.said).toBe('The media box is the trim, without bleed.');
  });

  it('is read once where both mean the same trim', async () => {
    const found = await trimOf({ media: [0, 0, 378, 522], crop: [9, 9, 369, 513] });
    expect(found).toMatchObject({ trim: { x: 9, y: 9 }, bleedReach: evenly(9) });
  });

  it('is a question where the two mean different trims', async () => {
    expect(await faultOf({ media: [0, 0, 378, 522], crop: [0, 0, 360, 504] })).toEqual({
      code: 'art-size-unclear',
      message:
        'The trim of page 1 of supper.pdf can be read in two ways. The media box is the trim and a bleed of 0.125 in (3.18 mm) on every side. Or: The crop box is the trim. The one begins at [0.125 in, 0.125 in], the other at [0 in, 0 in].',
      remedy: 'Write which as "trimAt": [x, y] at that face of the brief, or export the page with a TrimBox.',
      where: 'supper.pdf',
    });
  });
});

describe('what the brief says of a page', () => {
  it('counts before its own TrimBox', async () => {
    const found = await trimOf(
      { media: [0, 0, 612, 792], trim: [30, 20, 390, 524] },
      { ...WISH, trimAt: { x: 100, y: 50 } },
    );
    expect(found).toEqual({
      trim: { x: 100, y: 50, w: 360, h: 504 },
      bleedReach: { left: 100, right: 152, top: 238, bottom: 50 },
      said: 'The trim of page 1 of supper.pdf is where the brief puts it.',
    });
  });

  it('is measured on the page as it is turned', async () => {
    const found = await trimOf({ media: [0, 0, 700, 400] }, { ...WISH, rotate: 90, trimAt: { x: 9, y: 9 } });
    expect(found.trim).toEqual({ x: 9, y: 9, w: 360, h: 504 });
    expect(found.bleedReach).toEqual({ left: 9, right: 31, top: 187, bottom: 9 });
    expect(found.said).toBe(
      'The trim of page 1 of supper.pdf is where the brief puts it. It is turned 90 degrees counter-clockwise, as the brief says.',
    );
  });

  it('may not put the trim off the page, by more than a quarter of a millimetre', async () => {
    const at = (x: number, y: number) => find({ media: [0, 0, 612, 792] }, { ...WISH, trimAt: { x, y } });
    expect((await at(612 - 360, 792 - 504)).ok).toBe(true);
    expect((await at(-FIT_TOLERANCE_PT, 0)).ok).toBe(true);
    for (const [x, y] of [
      [-1, 0],
      [0, -1],
      [612 - 359, 0],
      [0, 792 - 503],
    ] as const) {
      const fault = await at(x, y);
      expect(fault).toMatchObject({ ok: false, fault: { code: 'art-size-wrong', where: 'supper.pdf' } });
    }
    expect(await at(288, 0)).toEqual({
      ok: false,
      fault: {
        code: 'art-size-wrong',
        message:
          '"trimAt" puts a trim of 5 × 7 in (127 × 177.8 mm) at 4 in, 0 in of page 1 of supper.pdf, but the page is 8.5 × 11 in (215.9 × 279.4 mm).',
        remedy:
          'Measure "trimAt" from the lower left corner of the page to the lower left corner of the trim, on the page turned as the brief turns it.',
        where: 'supper.pdf',
      },
    });
  });

  // A trim box with its four margins unlike each other, followed by eye through each turn.
  it.each([
    [0, { left: 10, right: 20, top: 30, bottom: 40 }],
    [90, { left: 30, right: 40, top: 20, bottom: 10 }],
    [180, { left: 20, right: 10, top: 40, bottom: 30 }],
    [270, { left: 40, right: 30, top: 10, bottom: 20 }],
  ] as const)('turns trim and bleeds counter-clockwise: %i degrees', async (rotate, bleedReach) => {
    const trim = { w: 100, h: 60 };
    const found = await trimOf(
      { media: [0, 0, 130, 130], trim: [10, 40, 110, 100] },
      { trim: lying(trim, rotate), bleed: 9, rotate },
    );
    expect(found.bleedReach).toEqual(bleedReach);
    expect(found.trim).toEqual({ x: bleedReach.left, y: bleedReach.bottom, ...lying(trim, rotate) });
  });
});

it('finds the same trim however the page is written and turned', async () => {
  const length = fc.integer({ min: 40, max: 300 });
  const edge = fc.integer({ min: 2, max: 60 });
  await fc.assert(
    fc.asyncProperty(
      fc.record({ w: length, h: length, left: edge, right: edge, top: edge, bottom: edge }),
      fc.constantFrom(...HEADS),
      fc.constantFrom(...HEADS),
      fc.constantFrom(1, 2),
      async ({ w, h, left, right, top, bottom }, pageRotate, turnBack, userUnit) => {
        // Seen upright, the page is this; the file turns it clockwise, the person counter-clockwise by as much.
        const rotate = ((pageRotate + turnBack) % 360) as Head;
        const upright: readonly number[] = [left, bottom, right, top];
        const [l, b, r, t] = upright.map((_, i) => upright[turnedEdge(i, rotate)]! / userUnit) as [
          number,
          number,
          number,
          number,
        ];
        const lies = lying({ w: w / userUnit, h: h / userUnit }, rotate);
        const found = await trimOf(
          {
            media: [-7, 5, l + lies.w + r - 7, b + lies.h + t + 5],
            trim: [l - 7, b + 5, l + lies.w - 7, b + lies.h + 5],
            rotate: pageRotate,
            userUnit,
          },
          { trim: { w, h }, bleed: 2, rotate: ((360 - turnBack) % 360) as Head },
        );
        expect(found.trim.x).toBeCloseTo(left, 9);
        expect(found.trim.y).toBeCloseTo(bottom, 9);
        expect(found.bleedReach.right).toBeCloseTo(right, 9);
        expect(found.bleedReach.top).toBeCloseTo(top, 9);
      },
    ),
    drawnCases(100),
  );
});

/** Where edge `i` of a page (left, bottom, right, top: 0 to 3) comes to lie when the page is turned clockwise. */
function turnedEdge(i: number, clockwise: Head): number {
  return (i + 4 - clockwise / 90) % 4;
}
