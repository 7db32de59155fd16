import { describe, expect, it } from 'vitest';
import { boundsOf, carryMark, layStamp, type WordsMark } from '../../../shared/marks/mark.ts';

const line = { kind: 'line', from: { x: 10, y: 20 }, to: { x: 10, y: 50 }, width: 2, ink: 'black' } as const;
const ring = { kind: 'ring', centre: { x: 10, y: 20 }, radius: 5, width: 1, ink: 'registration' } as const;
const words = (head: WordsMark['head']): WordsMark => ({
  kind: 'words',
  words: 'side 1',
  at: { x: 100, y: 200 },
  size: 10,
  width: 40,
  head,
  ink: 'black',
});

describe('the room that the ink of a mark takes', () => {
  it('is as wide as the stroke of a line and ends flat at its ends', () => {
    expect(boundsOf(line)).toEqual({ x: 9, y: 20, w: 2, h: 30 });
    expect(boundsOf({ ...line, to: { x: 30, y: 20 } })).toEqual({ x: 10, y: 19, w: 20, h: 2 });
  });

  it('reaches to the outer edge of a ring', () => {
    expect(boundsOf(ring)).toEqual({ x: 4.5, y: 14.5, w: 11, h: 11 });
  });

  it('reaches around all corners of a shape', () => {
    const corners = [
      { x: 1, y: 5 },
      { x: 4, y: 2 },
      { x: 3, y: 9 },
    ];
    expect(boundsOf({ kind: 'shape', corners, ink: 'black' })).toEqual({ x: 1, y: 2, w: 3, h: 7 });
    expect(() => boundsOf({ kind: 'shape', corners: [], ink: 'black' })).toThrow('without a point');
  });

  it.each([
    [0, { x: 100, y: 197.6, w: 40, h: 11.7 }],
    [90, { x: 90.7, y: 200, w: 11.7, h: 40 }],
    [180, { x: 60, y: 190.7, w: 40, h: 11.7 }],
    [270, { x: 97.6, y: 160, w: 11.7, h: 40 }],
  ] as const)('holds words with their accents and descenders, head at %i', (head, box) => {
    const bounds = boundsOf(words(head));
    for (const key of ['x', 'y', 'w', 'h'] as const) expect(bounds[key]).toBeCloseTo(box[key], 9);
  });
});

describe('marks that are carried elsewhere', () => {
  it('are looked at from behind with their strokes kept', () => {
    const behind = { a: -1, b: 0, c: 0, d: 1, e: 792, f: 0 };
    expect(carryMark(line, behind)).toEqual({ ...line, from: { x: 782, y: 20 }, to: { x: 782, y: 50 } });
    expect(carryMark(ring, behind)).toEqual({ ...ring, centre: { x: 782, y: 20 } });
  });

  it('are laid with their stamp, words turned with it', () => {
    const shape = {
      kind: 'shape',
      corners: [
        { x: 0, y: 0 },
        { x: 60, y: 10 },
      ],
      ink: 'black',
    } as const;
    const stamp = { size: { w: 200, h: 300 }, marks: [line, ring, shape, words(270)] };
    const laid = layStamp(stamp, { x: 1000, y: 0, w: 300, h: 200 }, 90);
    expect(laid).toEqual([
      { ...line, from: { x: 1280, y: 10 }, to: { x: 1250, y: 10 } },
      { ...ring, centre: { x: 1280, y: 10 } },
      {
        ...shape,
        corners: [
          { x: 1300, y: 0 },
          { x: 1290, y: 60 },
        ],
      },
      { ...words(0), at: { x: 1100, y: 100 } },
    ]);
  });
});
