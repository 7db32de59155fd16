import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grow } from '../../../shared/geometry/rect.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import { cropMarks, type MarkedCell } from '../../../shared/marks/cropMarks.ts';
import type { LineMark } from '../../../shared/marks/mark.ts';
import type { MarksInput } from '../../../shared/marks/marksOf.ts';
import { markedJobs } from '../../kit/markedJobs.ts';

const MM = 72 / 25.4;
const sheet = { x: 0, y: 0, w: 1000, h: 1000 };

const cell = (x: number, y: number, w: number, h: number, bleed: number): MarkedCell => ({
  trim: { x, y, w, h },
  bleed: [grow({ x, y, w, h }, bleed)],
});

/** Each mark as `x1 y1 x2 y2`, to a thousandth of a point. */
const strokes = (marks: readonly LineMark[]) =>
  marks.map(({ from, to }) => [from.x, from.y, to.x, to.y].map((v) => Number(v.toFixed(3))));

describe('crop marks', () => {
  it('stand at all four corners of a card, 5 mm long, 2 pt clear of its bleed', () => {
    const { marks, bare, cuts, unmarked } = cropMarks([cell(300, 400, 100, 200, 9)], sheet);
    const end = 11 + 5 * MM;
    const near = (v: number) => Number(v.toFixed(3));
    expect(strokes(marks)).toEqual([
      [300, near(400 - end), 300, 389],
      [300, 611, 300, near(600 + end)],
      [400, near(400 - end), 400, 389],
      [400, 611, 400, near(600 + end)],
      [near(300 - end), 400, 289, 400],
      [411, 400, near(400 + end), 400],
      [near(300 - end), 600, 289, 600],
      [411, 600, near(400 + end), 600],
    ]);
    expect({ bare, cuts, unmarked }).toEqual({ bare: [], cuts: 4, unmarked: 0 });
  });

  it('are hairlines on all plates', () => {
    for (const mark of cropMarks([cell(300, 400, 100, 200, 9)], sheet).marks) {
      expect(mark).toMatchObject({ kind: 'line', width: 0.25, ink: 'registration' });
    }
  });

  it('keep 2 mm away from a trim that has no bleed', () => {
    const { marks } = cropMarks([cell(300, 400, 100, 200, 0)], sheet);
    expect(marks[1]?.from.y).toBeCloseTo(600 + 2 * MM, 9);
  });

  it('are left out inside a gutter that is full of bleed', () => {
    const { marks } = cropMarks([cell(300, 400, 100, 200, 9), cell(418, 400, 100, 200, 9)], sheet);
    const inside = marks.filter((m) => m.from.x > 400 && m.to.x < 418);
    expect(inside).toEqual([]);
    expect(marks).toHaveLength(8 + 4);
  });

  it('are joined where they continue one another across a wide gutter', () => {
    const { marks } = cropMarks([cell(300, 400, 100, 200, 9), cell(450, 400, 100, 200, 9)], sheet);
    const inside = strokes(marks).filter(([x1, , x2]) => x1! > 400 && x2! < 450);
    expect(inside).toEqual([
      [411, 400, 439, 400],
      [411, 600, 439, 600],
    ]);
  });

  it('are printed once where two cards share a cut', () => {
    const { marks, cuts } = cropMarks([cell(300, 400, 100, 200, 0), cell(400, 400, 100, 200, 0)], sheet);
    expect(marks.filter((m) => m.from.x === 400 && m.to.x === 400)).toHaveLength(2);
    expect(cuts).toBe(5);
  });

  it('are cut short at the edge of what can be printed, and left out below 2 mm', () => {
    const card = [cell(300, 400, 100, 200, 9)];
    const short = cropMarks(card, { x: 0, y: 0, w: 1000, h: 620 });
    expect(strokes(short.marks)[1]).toEqual([300, 611, 300, 620]);
    const justEnough = cropMarks(card, { x: 0, y: 0, w: 1000, h: 611 + 2 * MM });
    expect(justEnough.bare).toEqual([]);
    const tooShort = cropMarks(card, { x: 0, y: 0, w: 1000, h: 611 + 2 * MM - 0.02 });
    expect(tooShort.bare).toEqual(['lead']);
    expect(tooShort.unmarked).toBe(0);
  });

  it.each([
    ['lead', { x: 200, y: 300, w: 300, h: 310 }],
    ['tail', { x: 200, y: 390, w: 300, h: 310 }],
    ['left', { x: 290, y: 300, w: 210, h: 400 }],
    ['right', { x: 200, y: 300, w: 210, h: 400 }],
  ] as const)('say when the %s edge has no room for any', (edge, area) => {
    expect(cropMarks([cell(300, 400, 100, 200, 9)], area).bare).toEqual([edge]);
  });

  it('count the cuts that have no mark at either end', () => {
    const area = { x: 290, y: 0, w: 120, h: 1000 };
    const { unmarked, cuts, bare } = cropMarks([cell(300, 400, 100, 200, 9)], area);
    expect({ unmarked, cuts, bare }).toEqual({ unmarked: 2, cuts: 4, bare: ['right', 'left'] });
  });

  it('stop short of a neighbour that stands in their way', () => {
    const { marks } = cropMarks([cell(300, 400, 100, 100, 9), cell(250, 526, 200, 100, 9)], sheet);
    const above = strokes(marks).filter(([x1, y1, x2]) => x1 === 300 && x2 === 300 && y1! > 500 && y1! < 526);
    expect(above).toEqual([]);
    const roomier = cropMarks([cell(300, 400, 100, 100, 9), cell(250, 530, 200, 100, 9)], sheet);
    const between = strokes(roomier.marks).filter(
      ([x1, y1, x2, y2]) => x1 === x2 && x1! >= 300 && x2! <= 400 && y1! > 500 && y2! < 530,
    );
    expect(between).toEqual([
      [300, 511, 300, 519],
      [400, 511, 400, 519],
    ]);
  });

  it('may pass a neighbour at 2 pt from its bleed, and no nearer', () => {
    const beside = (gap: number) =>
      cropMarks([cell(300, 400, 100, 100, 0), cell(400 + gap + 9, 400, 100, 200, 9)], sheet).marks.filter(
        (m) => m.from.x === 400 && m.to.x === 400 && m.from.y > 500,
      );
    expect(beside(2)).toHaveLength(1);
    expect(beside(1.98)).toHaveLength(0);
  });

  it('keep as far from a neighbour without bleed as from their own trim', () => {
    const { marks } = cropMarks([cell(300, 400, 100, 100, 9), cell(300, 526, 100, 100, 0)], sheet);
    const between = strokes(marks).filter(([, y1, , y2]) => y1! > 500 && y2! < 526);
    const end = Number((526 - 2 * MM).toFixed(3));
    expect(between).toEqual([
      [300, 511, 300, end],
      [400, 511, 400, end],
    ]);
  });

  it('are left out where half their stroke could not be printed', () => {
    const card = [cell(300, 400, 100, 200, 0)];
    const xs = (area: Rect) =>
      cropMarks(card, area).marks.flatMap((m) => (m.from.x === m.to.x ? [m.from.x] : []));
    expect(xs({ x: 299.875, y: 0, w: 100.25, h: 1000 })).toEqual([300, 300, 400, 400]);
    expect(xs({ x: 299.9, y: 0, w: 200, h: 1000 })).toEqual([400, 400]);
    expect(xs({ x: 200, y: 0, w: 200.1, h: 1000 })).toEqual([300, 300]);
  });

  it('stand wherever a corner has room for them, and nowhere else', () => {
    const property = fc.property(markedJobs, ([input]) => {
      const cells = input!.form.placements;
      const area = grow({ x: 0, y: 0, ...input!.sheet }, -12);
      const found = strokes(cropMarks(cells, area).marks);
      const rays = cells.flatMap(cornerRays);
      const roomy = rays.filter((ray) => isFree(ray, cells, area, UNDECIDED));
      const hardlyFree = rays.filter((ray) => isFree(ray, cells, area, -UNDECIDED));
      expect(roomy.filter((ray) => !found.some((stroke) => covers(stroke, ray)))).toEqual([]);
      expect(found.filter((stroke) => !hardlyFree.some((ray) => covers(stroke, ray)))).toEqual([]);
    });
    fc.assert(property, { examples: [[[cardInRoomOf(2 * MM - 0.01)]]] });
  });
});

/** What the program may take for enough or for too little, in pt: a little more than its tolerance. */
const UNDECIDED = 0.02;

/** A card of 40 pt whose marks at the left have this much room between its bleed and what cannot be printed. */
function cardInRoomOf(room: number): MarksInput {
  const trim = { x: 12 + room + 2 + 9, y: 20, w: 40, h: 40 };
  const bleed = [{ x: trim.x - 9, y: 11, w: 58, h: 58 }];
  const form = {
    number: 1,
    sides: [1],
    placements: [{ piece: 'Card', face: 'front', trim, head: 0, bleed }],
  } as const;
  return {
    sheet: { w: 121.9272, h: 120 },
    unprintable: { lead: 0, tail: 0, left: 0, right: 0 },
    work: { style: 'simplex' },
    forms: [form],
    form,
    slug: { job: '', sheets: 33, date: '2026-03-01' },
    measure: (words) => 0.6 * words.length,
  };
}

/** Whether a stroke runs along the least mark of a ray. */
function covers(stroke: readonly number[], ray: Ray): boolean {
  const [x1, y1, x2, y2] = stroke as [number, number, number, number];
  const [endX, endY] = [ray.x + ray.dx * 2 * MM, ray.y + ray.dy * 2 * MM];
  return (
    x1 <= Math.min(ray.x, endX) + UNDECIDED &&
    x2 >= Math.max(ray.x, endX) - UNDECIDED &&
    y1 <= Math.min(ray.y, endY) + UNDECIDED &&
    y2 >= Math.max(ray.y, endY) - UNDECIDED
  );
}

interface Ray {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  /** The piece that it marks, from which it begins as far away as it should. */
  readonly of: MarkedCell;
}

/** From every corner of a piece the two ways outward, starting where a mark may start. */
function cornerRays(of: MarkedCell): readonly Ray[] {
  const { trim, bleed } = of;
  // A bleed with steps is cleared where the mark stands.
  const above = (x: number) => bleed.filter((r) => x >= r.x - 2 && x <= r.x + r.w + 2);
  const beside = (y: number) => bleed.filter((r) => y >= r.y - 2 && y <= r.y + r.h + 2);
  const top = (x: number) => Math.max(trim.y + trim.h + 2 * MM, ...above(x).map((r) => r.y + r.h + 2));
  const bottom = (x: number) => Math.min(trim.y - 2 * MM, ...above(x).map((r) => r.y - 2));
  const right = (y: number) => Math.max(trim.x + trim.w + 2 * MM, ...beside(y).map((r) => r.x + r.w + 2));
  const left = (y: number) => Math.min(trim.x - 2 * MM, ...beside(y).map((r) => r.x - 2));
  return [
    ...[trim.x, trim.x + trim.w].flatMap((x) => [
      { of, x, y: top(x), dx: 0, dy: 1 },
      { of, x, y: bottom(x), dx: 0, dy: -1 },
    ]),
    ...[trim.y, trim.y + trim.h].flatMap((y) => [
      { of, x: right(y), y, dx: 1, dy: 0 },
      { of, x: left(y), y, dx: -1, dy: 0 },
    ]),
  ];
}

/** Whether the least mark along this ray keeps clear of all bleeds and edges, with so much to spare: tried in steps. */
function isFree(ray: Ray, cells: readonly MarkedCell[], area: Rect, spare: number): boolean {
  const others = cells.filter((cell) => cell !== ray.of);
  for (let step = 0; step <= 100; step++) {
    const x = ray.x + (ray.dx * 2 * MM * step) / 100;
    const y = ray.y + (ray.dy * 2 * MM * step) / 100;
    const half = 0.125;
    const [hx, hy] = ray.dx === 0 ? [half + spare, spare] : [spare, half + spare];
    const printable =
      x - hx >= area.x && x + hx <= area.x + area.w && y - hy >= area.y && y + hy <= area.y + area.h;
    const isNear = (r: Rect, by: number) =>
      x > r.x - by && x < r.x + r.w + by && y > r.y - by && y < r.y + r.h + by;
    const touches = others.some(
      ({ trim, bleed }) => bleed.some((r) => isNear(r, 2 + spare)) || isNear(trim, 2 * MM + spare),
    );
    if (!printable || touches) return false;
  }
  return true;
}
