// One place of the dummy, whatever its room: what is said stands in the middle of it, upright as the head is, and is seen.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS, type Head } from '../../../shared/geometry/head.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { Shape, WordsShape } from '../../../shared/pdf/document/shape.ts';
import { drawPiece } from '../../../shared/runSheet/pieceBox.ts';
import type { SeenPiece } from '../../../shared/runSheet/seenPasses.ts';
import { MEASURES } from '../../kit/setPapers.ts';
import { type Extent, extentOf, liesApart, liesIn, pathsIn, pointsOf, wordsIn } from '../../kit/shapes.ts';

const piece = (changes: Partial<SeenPiece> = {}): SeenPiece => ({
  number: 7,
  piece: 'Place tag',
  face: 'front',
  printed: true,
  trim: { x: 0, y: 0, w: 50, h: 50 },
  head: 0,
  ...changes,
});
const draw = (seen: SeenPiece, room: Rect, letter?: string) => drawPiece(seen, room, letter, MEASURES);
const edgesOf = ({ x, y, w, h }: Rect): Extent => ({ left: x, right: x + w, bottom: y, top: y + h });

/** The room of capitals and figures, turned as they are. The height of a capital: common practice, 0.73 of the size. */
function capitals({ words, at, size, weight, head }: WordsShape): Extent {
  const [length, high] = [MEASURES[weight](words) * size, 0.73 * size];
  const turns: Readonly<Record<number, Extent>> = {
    0: { left: at.x, right: at.x + length, bottom: at.y, top: at.y + high },
    90: { left: at.x - high, right: at.x, bottom: at.y, top: at.y + length },
    180: { left: at.x - length, right: at.x, bottom: at.y - high, top: at.y },
    270: { left: at.x, right: at.x + high, bottom: at.y - length, top: at.y },
  };
  return turns[head]!;
}

const rooms = fc.record({
  x: fc.integer({ min: -50, max: 50 }),
  y: fc.integer({ min: -50, max: 50 }),
  w: fc.integer({ min: 24, max: 260 }),
  h: fc.integer({ min: 24, max: 260 }),
});
const heads = fc.constantFrom(...HEADS);

describe('a place of the dummy', () => {
  it('is framed where it lies, and holds all that is drawn in it, nothing over anything else', () => {
    fc.assert(
      fc.property(rooms, heads, fc.constantFrom(undefined, 'B'), (room, head, letter) => {
        const shapes = draw(piece({ head }), room, letter);
        const [frame, ...inside] = pathsIn(shapes);
        const edges = edgesOf(room);
        expect(extentOf(frame!)).toEqual(edges);
        const words = wordsIn(shapes);
        const drawn = [...words.map(capitals), ...inside.map(extentOf)];
        expect(drawn.filter((extent) => !liesIn(extent, edges))).toEqual([]);
        expect(drawn.every((a, i) => drawn.slice(i + 1).every((b) => liesApart(a, b)))).toBe(true);
        expect(words.every((said) => said.head === head)).toBe(true);
      }),
    );
  });

  it('has its letter and its number in the middle between left and right as its reader sees it', () => {
    fc.assert(
      fc.property(rooms, heads, (room, head) => {
        const edges = edgesOf(room);
        for (const { left, right, bottom, top } of wordsIn(draw(piece({ head }), room)).map(capitals)) {
          if (head % 180 === 0) expect(left + right).toBeCloseTo(edges.left + edges.right);
          else expect(bottom + top).toBeCloseTo(edges.bottom + edges.top);
        }
      }),
    );
  });

  it('has as much room above its letter as below it, triangle and number taken off', () => {
    // 60 wide: a triangle of 9 takes 11.7 at the head; 10 pt of number take 13.5 at the foot.
    const [letter, number] = wordsIn(draw(piece(), { x: 0, y: 0, w: 100, h: 100 })).map(capitals);
    expect([letter!.bottom - 13.5, 100 - 11.7 - letter!.top].map((n) => n.toFixed(3))).toEqual(
      Array(2).fill(((100 - 13.5 - 11.7 - 0.73 * 30) / 2).toFixed(3)),
    );
    expect(number!.bottom).toBeGreaterThan(1.5);
    expect(number!.top).toBeLessThan(13.5);
    const [alone] = wordsIn(draw(piece({ number: undefined }), { x: 0, y: 0, w: 100, h: 100 })).map(capitals);
    expect(alone!.bottom).toBeCloseTo(100 - 11.7 - alone!.top);
  });

  it('is larger type in a larger room, up to thirty points and down to five', () => {
    const size = (least: number) => wordsIn(draw(piece(), { x: 0, y: 0, w: least, h: 200 }))[0]!.size;
    expect([5, 50, 200].map(size)).toEqual([5, 18, 30]);
    const told = (least: number) => wordsIn(draw(piece(), { x: 0, y: 0, w: least, h: 200 }))[1]!.size;
    expect([20, 75, 300].map(told)).toEqual([6.5, 9, 10]);
  });

  it('points to the head with a triangle on the axis, no larger than a fifth of the room', () => {
    const triangle = (w: number, h: number) => extentOf(pathsIn(draw(piece(), { x: 0, y: 0, w, h }))[1]!);
    expect(triangle(100, 200)).toEqual({ left: 41, right: 59, top: 200 - 1.08, bottom: 200 - 10.35 });
    const small = triangle(20, 30);
    expect(small.right - small.left).toBeCloseTo(2 * 0.22 * 20);
    expect(small.left + small.right).toBeCloseTo(20);
  });

  it('says its number alone where its name has no room, and nothing that is not so', () => {
    const said = (number: number | undefined, letter: string | undefined, w: number) =>
      wordsIn(draw(piece({ number }), { x: 0, y: 0, w, h: 90 }, letter)).map(({ words }) => words);
    expect(said(undefined, 'B', 200)).toEqual(['F', 'B Place tag']);
    expect(said(undefined, 'B', 30)).toEqual(['F', 'B']);
    expect(said(undefined, undefined, 200)).toEqual(['F']);
    expect(said(128, 'B', 24)).toEqual(['F', 'B']);
    // No room for a second line.
    const low = (h: number) => wordsIn(draw(piece(), { x: 0, y: 0, w: 60, h }));
    expect([low(26).length, low(36).length]).toEqual([1, 2]);
  });

  it('tells backs from fronts by shade and by dashes, and what is blank by a thinner line', () => {
    const look = (changes: Partial<SeenPiece>) => {
      const [frame] = pathsIn(draw(piece(changes), { x: 0, y: 0, w: 60, h: 60 }));
      return [frame!.fill, frame!.stroke!.tone, frame!.stroke!.dash !== undefined];
    };
    const width = (printed: boolean) =>
      pathsIn(draw(piece({ face: 'back', printed }), { x: 0, y: 0, w: 60, h: 60 }))[0]!.stroke!.width;
    expect(look({ face: 'front' })).toEqual(['paper', 'ink', false]);
    expect(look({ face: 'back' })).toEqual(['pale', 'ink', true]);
    expect(look({ face: 'back', printed: false })).toEqual(['pale', 'ink', true]);
    expect(width(false)).toBeLessThan(width(true));
    const face = (of: 'front' | 'back') =>
      wordsIn(draw(piece({ face: of }), { x: 0, y: 0, w: 60, h: 60 }))[0]!.words;
    expect([face('front'), face('back')]).toEqual(['F', 'B']);
  });

  it('says blank in the middle, softly, as large as it fits', () => {
    for (const head of HEADS as readonly Head[]) {
      const blank = piece({ face: 'back', printed: false, head });
      const [said, ...more] = wordsIn(draw(blank, { x: 10, y: 20, w: 60, h: 60 }));
      const { left, right, bottom, top } = capitals(said!);
      expect([said!.words, said!.tone, said!.weight, more]).toEqual(['blank', 'soft', 'plain', []]);
      expect([left + right, bottom + top].map((n) => n.toFixed(6))).toEqual(['80.000000', '100.000000']);
      expect(said!.size).toBeCloseTo(9.6);
    }
    const at = (w: number) => wordsIn(draw(piece({ printed: false }), { x: 0, y: 0, w, h: 60 }))[0]!;
    expect([at(300).size, at(20).size]).toEqual([11, 5]);
    expect(at(14).words).toMatch(/^b.*…$/);
    expect(wordsIn(draw(piece({ printed: false }), { x: 0, y: 0, w: 5, h: 60 }))).toEqual([]);
  });
});

describe('the head and the words of a place', () => {
  const saidIn = (shapes: readonly Shape[]) => wordsIn(shapes).map(({ words }) => words);

  it.each([
    [0, { x: 50, y: 180 }],
    [90, { x: 20, y: 130 }],
    [180, { x: 50, y: 80 }],
    [270, { x: 80, y: 130 }],
  ] as const)('has its triangle at the head, turned by %i degrees', (head, edge) => {
    const room = { x: 20, y: 80, w: 60, h: 100 };
    const triangle = pathsIn(drawPiece(piece({ head }), room, undefined, MEASURES)).find(
      ({ fill }) => fill === 'ink',
    )!;
    const [tip, one, other] = pointsOf(triangle);
    // The tip is what lies nearest to the middle of the edge that the head points to.
    const far = (p: { x: number; y: number }) => Math.hypot(p.x - edge.x, p.y - edge.y);
    expect(far(tip!)).toBeLessThan(2);
    expect(far(one!)).toBeGreaterThan(far(tip!));
    expect(far(other!)).toBeCloseTo(far(one!));
  });

  it('says its number, and its letter and name as far as there is room', () => {
    const said = (w: number, h: number, letter: string | undefined) =>
      saidIn(drawPiece(piece(), { x: 0, y: 0, w, h }, letter, MEASURES));
    expect(said(200, 100, 'B')).toEqual(['F', '7 B Place tag']);
    expect(said(40, 100, 'B')).toEqual(['F', '7 B']);
    expect(said(40, 100, undefined)).toEqual(['F', '7']);
    expect(said(10, 12, 'B')).toEqual(['F']);
  });

  it('says blank where nothing is printed', () => {
    const blank = piece({ face: 'back', printed: false });
    expect(saidIn(drawPiece(blank, { x: 0, y: 0, w: 80, h: 60 }, undefined, MEASURES))).toEqual(['blank']);
  });
});
