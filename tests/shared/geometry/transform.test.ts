import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Point, Rect } from '../../../shared/geometry/space.ts';
import { apply, applyToRect, chain, inverse, type Transform } from '../../../shared/geometry/transform.ts';
import { numberFrom } from '../../kit/anyNumber.ts';

const number = numberFrom(-500, 500);
const matrices = fc.record({ a: number, b: number, c: number, d: number, e: number, f: number });

it('maps a point by the matrix of ISO 32000', () => {
  // ISO 32000-1, 8.3.4: x' = a x + c y + e, y' = b x + d y + f.
  expect(apply({ a: 2, b: 3, c: 5, d: 7, e: 11, f: 13 }, { x: 17, y: 19 })).toEqual({
    x: 2 * 17 + 5 * 19 + 11,
    y: 3 * 17 + 7 * 19 + 13,
  });
});

it('does one transform after the other', () => {
  fc.assert(
    fc.property(matrices, matrices, number, number, (first, second, x, y) => {
      const stepwise = apply(second, apply(first, { x, y }));
      const atOnce = apply(chain(first, second), { x, y });
      expect(atOnce.x).toBeCloseTo(stepwise.x, 2);
      expect(atOnce.y).toBeCloseTo(stepwise.y, 2);
    }),
  );
});

it('finds the way back', () => {
  fc.assert(
    fc.property(matrices, number, number, (m, x, y) => {
      fc.pre(Math.abs(m.a * m.d - m.b * m.c) > 1);
      const there = apply(m, { x, y });
      const back = apply(inverse(m), there);
      expect(back.x).toBeCloseTo(x, 3);
      expect(back.y).toBeCloseTo(y, 3);
    }),
  );
});

it('has no way back from a flattened plane', () => {
  expect(() => inverse({ a: 1, b: 2, c: 2, d: 4, e: 0, f: 0 })).toThrow('flattens the plane');
  expect(() => inverse({ a: Number.NaN, b: 0, c: 0, d: 1, e: 0, f: 0 })).toThrow('flattens the plane');
});

it('maps a rectangle to the upright rectangle around it', () => {
  expect(applyToRect({ a: 0, b: 1, c: -1, d: 0, e: 100, f: 0 }, { x: 10, y: 20, w: 30, h: 40 })).toEqual({
    x: 40,
    y: 10,
    w: 40,
    h: 30,
  });
  expect(applyToRect({ a: 1, b: 0, c: 1, d: 1, e: 0, f: 0 }, { x: 0, y: 0, w: 2, h: 3 })).toEqual({
    x: 0,
    y: 0,
    w: 5,
    h: 3,
  });
});

it('keeps the spaces apart: what belongs to one side does not compile on the other', () => {
  const onSide1: Point<'side1'> = { x: 1, y: 2 };
  const box: Rect<'side1'> = { x: 0, y: 0, w: 1, h: 1 };
  const toSide2: Transform<'side1', 'side2'> = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  const onSide2: Point<'side2'> = apply(toSide2, onSide1);
  // @ts-expect-error a point of side 2 is not one of side 1
  const wrongPoint: Point<'side1'> = onSide2;
  // @ts-expect-error a rectangle of side 1 is not one of side 2
  const wrongBox: Rect<'side2'> = box;
  // @ts-expect-error a transform from side 1 does not start on side 2
  const wrongStart: Transform<'side2', 'side2'> = toSide2;
  // @ts-expect-error a transform to side 2 does not end on the piece
  const wrongEnd: Transform<'side1', 'piece'> = toSide2;
  expect([wrongPoint, wrongBox, wrongStart, wrongEnd]).toHaveLength(4);
});
