import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds, overlap } from '../../../shared/geometry/rect.ts';
import { boundsOf, type Stamp } from '../../../shared/marks/mark.ts';
import { CLEARANCE_PT, findRoom, marginsAround, placeFirst } from '../../../shared/marks/room.ts';

const margin = { x: 10, y: 100, w: 200, h: 30 };
const middle = { x: 0.5, y: 0.5 };

describe('the margins around a block', () => {
  it('run from the edge of what can be printed to 2 pt before the bleeds', () => {
    const area = { x: 9, y: 21, w: 774, h: 1188 };
    const block = { x: 18, y: 90, w: 756, h: 1044 };
    expect(CLEARANCE_PT).toBe(2);
    expect(marginsAround(area, block)).toEqual({
      lead: { x: 9, y: 1136, w: 774, h: 73 },
      tail: { x: 9, y: 21, w: 774, h: 67 },
      left: { x: 9, y: 21, w: 7, h: 1188 },
      right: { x: 776, y: 21, w: 7, h: 1188 },
    });
  });
});

describe('room in a margin', () => {
  it('is where it was wished for when that is free', () => {
    expect(findRoom(margin, { w: 20, h: 10 }, [], { x: 0, y: 1 })).toEqual({ x: 10, y: 120, w: 20, h: 10 });
    expect(findRoom(margin, { w: 20, h: 10 }, [], { x: 1, y: 0 })).toEqual({ x: 190, y: 100, w: 20, h: 10 });
    expect(findRoom(margin, { w: 20, h: 10 }, [], middle)).toEqual({ x: 100, y: 110, w: 20, h: 10 });
  });

  it('is beside what is taken, as near to the wish as can be', () => {
    const taken = [{ x: 90, y: 90, w: 50, h: 60 }];
    expect(findRoom(margin, { w: 20, h: 10 }, taken, middle)).toEqual({ x: 70, y: 110, w: 20, h: 10 });
    const above = [{ x: 0, y: 105, w: 300, h: 8 }];
    expect(findRoom(margin, { w: 20, h: 10 }, above, middle)).toEqual({ x: 100, y: 113, w: 20, h: 10 });
  });

  it('is at the left when both sides are as near', () => {
    const taken = [{ x: 90, y: 90, w: 40, h: 60 }];
    expect(findRoom(margin, { w: 20, h: 10 }, taken, middle)?.x).toBe(70);
  });

  it('may fill the margin to its edges, and is refused a hair beyond', () => {
    expect(findRoom(margin, { w: 200, h: 30 }, [], middle)).toEqual(margin);
    expect(findRoom(margin, { w: 200.02, h: 30 }, [], middle)).toBeUndefined();
    expect(findRoom(margin, { w: 200, h: 30.02 }, [], middle)).toBeUndefined();
  });

  it('is nowhere in a margin that is taken', () => {
    expect(findRoom(margin, { w: 20, h: 10 }, [{ x: 0, y: 109, w: 400, h: 12 }], middle)).toBeUndefined();
  });

  it('is as near to the wish as a search in small steps finds any', () => {
    const whole = (min: number, max: number) => fc.integer({ min, max });
    const rects = fc.record({ x: whole(0, 60), y: whole(0, 30), w: whole(1, 25), h: whole(1, 15) });
    const strip = { x: 5, y: 5, w: 50, h: 20 };
    const sizes = fc.record({ w: whole(1, 25), h: whole(1, 15) });
    const wishes = fc.record({ x: fc.constantFrom(0, 0.5, 1), y: fc.constantFrom(0, 0.5, 1) });
    fc.assert(
      fc.property(fc.array(rects, { maxLength: 8 }), sizes, wishes, (taken, size, wish) => {
        const wished = { x: 5 + wish.x * (50 - size.w), y: 5 + wish.y * (20 - size.h) };
        let nearest = Number.POSITIVE_INFINITY;
        for (let x = 5; x + size.w <= 55; x += 0.5) {
          for (let y = 5; y + size.h <= 25; y += 0.5) {
            if (taken.some((t) => overlap(t, { x, y, ...size }))) continue;
            nearest = Math.min(nearest, Math.hypot(x - wished.x, y - wished.y));
          }
        }
        const room = findRoom(strip, size, taken, wish);
        if (room === undefined) {
          expect(nearest).toBe(Number.POSITIVE_INFINITY);
          return;
        }
        expect(holds(strip, room)).toBe(true);
        expect(taken.filter((t) => overlap(t, room))).toEqual([]);
        expect(Math.hypot(room.x - wished.x, room.y - wished.y)).toBeCloseTo(nearest, 9);
      }),
    );
  });
});

describe('a stamp that may go to several places', () => {
  const stamp = (w: number, h: number): Stamp => ({
    size: { w, h },
    marks: [{ kind: 'line', from: { x: 0, y: 0 }, to: { x: w, y: 0 }, width: 1, ink: 'black' }],
  });
  const upright = { margin, head: 0, wish: { x: 0, y: 0 } } as const;
  const turned = { margin: { x: 0, y: 0, w: 12, h: 500 }, head: 90, wish: { x: 0, y: 0 } } as const;

  it('goes to the first place that takes it, in the first shape that fits there', () => {
    const placed = placeFirst([stamp(300, 10), stamp(50, 40), stamp(60, 30), stamp(5, 5)], [upright], []);
    expect(placed).toEqual([
      { kind: 'line', from: { x: 10, y: 100 }, to: { x: 70, y: 100 }, width: 1, ink: 'black' },
    ]);
  });

  it('keeps 6 pt away from what is there, or else 2 pt', () => {
    const taken = [{ x: 10, y: 100, w: 100, h: 30 }];
    const startOf = (w: number) => placeFirst([stamp(w, 10)], [upright], taken)?.map((m) => boundsOf(m).x);
    expect(startOf(94)).toEqual([116]);
    expect(startOf(95)).toEqual([112]);
    expect(startOf(98)).toEqual([112]);
    expect(startOf(99)).toBeUndefined();
  });

  it('is turned where the place asks for it', () => {
    const placed = placeFirst([stamp(300, 10)], [upright, turned], []);
    expect(placed).toEqual([
      { kind: 'line', from: { x: 10, y: 0 }, to: { x: 10, y: 300 }, width: 1, ink: 'black' },
    ]);
  });

  it('is not placed at all where nothing fits', () => {
    expect(placeFirst([stamp(600, 10)], [upright, turned], [])).toBeUndefined();
  });
});
