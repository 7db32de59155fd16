import { describe, expect, it } from 'vitest';
import { faceArtKey, faceArtOf, printedPart, toPiece } from '../../../renderer/art-pictures/faceArt.ts';
import {
  type PictureWish,
  planPictures,
  type Sight,
  serves,
} from '../../../renderer/art-pictures/planPictures.ts';
import { apply } from '../../../shared/geometry/transform.ts';
import type { Job } from '../../../shared/job/job.ts';
import type { ArtPage } from '../../../shared/pdf/art/artPage.ts';
import { supperJob } from '../kit/supperJob.ts';

const whole = { x: -9, y: -9, w: 378, h: 522 };
const sight = (scale: number, rest: Partial<Sight> = {}): Sight => ({
  key: 'front',
  whole,
  seen: whole,
  scale,
  ...rest,
});
const roomy = { each: 1e9, all: 1e9 };
const pixels = (wishes: readonly PictureWish[]) =>
  wishes.reduce((sum, w) => sum + w.part.w * w.part.h * w.scale ** 2, 0);

describe('the pictures of the art', () => {
  it('are just as large as they are seen', () => {
    expect(planPictures([sight(0.5)], roomy)).toEqual([
      { key: 'front', part: whole, scale: 0.5, detail: false },
    ]);
  });

  it('of a face seen very near are the whole, as sharp as may be, and over it the part that is seen', () => {
    const seen = { x: 100, y: 100, w: 100, h: 50 };
    const [base, detail, ...more] = planPictures([sight(8, { seen })], { each: 500_000, all: 1e9 });
    expect(more).toEqual([]);
    expect(base).toEqual({
      key: 'front',
      part: whole,
      scale: Math.sqrt(500_000 / (378 * 522)),
      detail: false,
    });
    expect(detail).toEqual({
      key: 'front',
      part: { x: 85, y: 85, w: 130, h: 80 },
      scale: Math.sqrt(500_000 / (130 * 80)),
      detail: true,
    });
  });

  it('of a part that fits are as sharp as the screen', () => {
    const seen = { x: 100, y: 100, w: 10, h: 10 };
    const [, detail] = planPictures([sight(8, { seen })], { each: 500_000, all: 1e9 });
    expect(detail?.scale).toBe(8);
  });

  it('of a part do not reach beyond the art', () => {
    const seen = { x: 300, y: 400, w: 69, h: 113 };
    const [, detail] = planPictures([sight(8, { seen })], { each: 500_000, all: 1e9 });
    expect(detail?.part.x).toBeCloseTo(300 - 0.15 * 113, 9);
    expect((detail?.part.x ?? 0) + (detail?.part.w ?? 0)).toBeCloseTo(369, 9);
  });

  it('of a face that is off the screen are the whole alone', () => {
    expect(planPictures([sight(8, { seen: undefined })], { each: 500_000, all: 1e9 })).toHaveLength(1);
    const beyond = { x: 1000, y: 1000, w: 5, h: 5 };
    expect(planPictures([sight(8, { seen: beyond })], { each: 500_000, all: 1e9 })).toHaveLength(1);
  });

  it('together never take more than the window can hold', () => {
    const many = Array.from({ length: 40 }, (_, i) => sight(4, { key: `face ${i}` }));
    const wishes = planPictures(many);
    expect(pixels(wishes)).toBeCloseTo(2 ** 26, 0);
    expect(new Set(wishes.map((w) => w.scale)).size).toBe(1);
    expect(planPictures([])).toEqual([]);
  });

  it('serve as long as they are sharp, whole and not much too fine', () => {
    const wish: PictureWish = { key: 'front', part: { x: 0, y: 0, w: 10, h: 20 }, scale: 2, detail: false };
    expect(serves(wish, wish)).toBe(true);
    expect(serves({ ...wish, scale: 3 }, wish)).toBe(true);
    expect(serves({ ...wish, scale: 3.3 }, wish)).toBe(false);
    expect(serves({ ...wish, scale: 1.9 }, wish)).toBe(false);
    expect(serves({ ...wish, key: 'back' }, wish)).toBe(false);
    expect(serves({ ...wish, detail: true }, wish)).toBe(false);
    for (const part of [
      { x: 0.1, y: 0, w: 10, h: 20 },
      { x: 0, y: 0.1, w: 10, h: 20 },
      { x: 0, y: 0, w: 9.9, h: 20 },
      { x: 0, y: 0, w: 10, h: 19.9 },
    ]) {
      expect(serves({ ...wish, part }, wish)).toBe(false);
    }
    expect(serves({ ...wish, part: { x: -1, y: -1, w: 12, h: 22 } }, wish)).toBe(true);
  });
});

describe('the art of a face', () => {
  const trim = { x: 20, y: 10, w: 360, h: 504 };
  const job: Job = {
    ...supperJob,
    art: [{ piece: 'Supper', face: 'back', sha256: 'a1', trim, said: '' }],
  };

  it('is the page that the brief names, with the trim that was found on it', () => {
    const face = faceArtOf(job, 'Supper', 'back');
    expect(face).toEqual({ art: 'supper.pdf', page: 2, rotate: 0, trim, bleed: 9 });
    expect(printedPart(face!)).toEqual({ x: -9, y: -9, w: 378, h: 522 });
    expect(faceArtOf(job, 'Supper', 'front')).toBeUndefined();
    expect(faceArtOf(job, 'Lunch', 'back')).toBeUndefined();
  });

  it('is the same picture for the same page, trim and bleed, and another for any other', () => {
    const face = faceArtOf(job, 'Supper', 'back')!;
    expect(faceArtKey({ ...face })).toBe(faceArtKey(face));
    for (const other of [{ page: 1 }, { rotate: 180 as const }, { bleed: 8 }, { trim: { ...trim, x: 21 } }]) {
      expect(faceArtKey({ ...face, ...other })).not.toBe(faceArtKey(face));
    }
  });

  it('is led from its file to the piece: upright, turned as the brief says, its trim at the origin', () => {
    // A page of 400 x 550 whose media box begins at (5, 7).
    const page = { size: { w: 400, h: 550 }, toArt: { a: 1, b: 0, c: 0, d: 1, e: -5, f: -7 } } as ArtPage;
    const face = faceArtOf(job, 'Supper', 'back')!;
    expect(apply(toPiece(face, page), { x: 25, y: 17 })).toEqual({ x: 0, y: 0 });
    // Half round, the trim begins at (20, 10) of the turned page: at (380, 540) of the page as viewed.
    expect(apply(toPiece({ ...face, rotate: 180 }, page), { x: 385, y: 547 })).toEqual({ x: 0, y: 0 });
  });
});
