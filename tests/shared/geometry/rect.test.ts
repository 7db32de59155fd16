import { describe, expect, it } from 'vitest';
import {
  around,
  centre,
  grow,
  growEdges,
  holds,
  intersection,
  overlap,
  shift,
  wholeOf,
} from '../../../shared/geometry/rect.ts';
import { same, TOLERANCE, within } from '../../../shared/geometry/tolerance.ts';

const card = { x: 10, y: 20, w: 360, h: 504 };

describe('rectangles', () => {
  it('grow by a bleed on every side', () => {
    expect(grow(card, 9)).toEqual({ x: 1, y: 11, w: 378, h: 522 });
  });

  it('grow by a length of its own on every edge', () => {
    expect(growEdges(card, { left: 1, right: 2, top: 3, bottom: 4 })).toEqual({
      x: 9,
      y: 16,
      w: 363,
      h: 511,
    });
  });

  it('move without changing size', () => {
    expect(shift(card, 5, -7)).toEqual({ x: 15, y: 13, w: 360, h: 504 });
  });

  it('have their middle in the middle', () => {
    expect(centre(card)).toEqual({ x: 190, y: 272 });
  });

  it('cover the whole of a sheet from the origin', () => {
    expect(wholeOf({ w: 792, h: 1224 })).toEqual({ x: 0, y: 0, w: 792, h: 1224 });
  });

  it('share what both cover, and nothing where they only touch', () => {
    expect(intersection(card, { x: 360, y: 0, w: 100, h: 50 })).toEqual({ x: 360, y: 20, w: 10, h: 30 });
    expect(intersection(card, { x: 370, y: 20, w: 10, h: 504 })).toBeUndefined();
    expect(intersection(card, { x: 10, y: 524, w: 360, h: 5 })).toBeUndefined();
    expect(intersection(card, { x: 0, y: 0, w: 10, h: 10 })).toBeUndefined();
  });

  it('are held by the smallest rectangle around them', () => {
    expect(around([card, { x: 0, y: 500, w: 20, h: 60 }])).toEqual({ x: 0, y: 20, w: 370, h: 540 });
    expect(around([])).toBeUndefined();
  });
});

describe('the one tolerance', () => {
  it('is 3.5 micrometres, less than a fifth of a 1200 dpi dot', () => {
    expect((TOLERANCE * 25.4) / 72).toBeCloseTo(0.003528, 6);
    expect(TOLERANCE).toBeLessThan(72 / 1200 / 5);
  });

  it('calls lengths the same up to it and not beyond', () => {
    expect(same(5, 5.009)).toBe(true);
    expect(same(5.009, 5)).toBe(true);
    expect(same(5, 5.011)).toBe(false);
    expect(within(5.009, 5)).toBe(true);
    expect(within(5.011, 5)).toBe(false);
    expect(within(4, 5)).toBe(true);
    expect(within(0, -TOLERANCE)).toBe(true);
    expect(same(0, TOLERANCE)).toBe(true);
  });

  it('forgives an overlap no deeper than itself, in either direction', () => {
    expect(overlap(card, { x: 370 - 0.009, y: 20, w: 10, h: 504 })).toBe(false);
    expect(overlap(card, { x: 370 - 0.02, y: 20, w: 10, h: 504 })).toBe(true);
    expect(overlap(card, { x: 10, y: 524 - 0.009, w: 360, h: 10 })).toBe(false);
    expect(overlap(card, { x: 10, y: 524 - 0.02, w: 360, h: 10 })).toBe(true);
    expect(overlap(card, { x: 900, y: 900, w: 1, h: 1 })).toBe(false);
  });

  it('lets a card stand over an edge by no more than itself', () => {
    const sheet = { x: 0, y: 0, w: 400, h: 600 };
    expect(holds(sheet, { x: -0.009, y: 0, w: 10, h: 10 })).toBe(true);
    expect(holds(sheet, { x: -0.02, y: 0, w: 10, h: 10 })).toBe(false);
    expect(holds(sheet, { x: 0, y: -0.02, w: 10, h: 10 })).toBe(false);
    expect(holds(sheet, { x: 390, y: 0, w: 10.02, h: 10 })).toBe(false);
    expect(holds(sheet, { x: 390, y: 0, w: 10.009, h: 10 })).toBe(true);
    expect(holds(sheet, { x: 0, y: 590, w: 10, h: 10.02 })).toBe(false);
    expect(holds(sheet, { x: 0, y: 590, w: 10, h: 10.009 })).toBe(true);
  });
});
