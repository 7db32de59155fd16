import { describe, expect, it } from 'vitest';
import { repeat } from '../../../shared/bench/repeat.ts';

describe('step and repeat', () => {
  it('sets copies a gutter apart, row by row, the original left out', () => {
    const copies = repeat(
      { w: 100, h: 50 },
      { across: 3, along: 2, gapAcross: 18, gapAlong: 9, towards: ['right', 'lead'] },
    );
    expect(copies).toEqual([
      { dx: 118, dy: 0 },
      { dx: 236, dy: 0 },
      { dx: 0, dy: 59 },
      { dx: 118, dy: 59 },
      { dx: 236, dy: 59 },
    ]);
  });

  it('goes to the left and towards the tail when told to', () => {
    const [copy, ...more] = repeat(
      { w: 100, h: 50 },
      { across: 2, along: 2, gapAcross: 18, gapAlong: 9, towards: ['left', 'tail'] },
    );
    expect(copy?.dx).toBe(-118);
    expect(more.map((c) => c.dy)).toEqual([-59, -59]);
  });

  it('makes no copy of a piece that is wanted once', () => {
    const once = { across: 1, along: 1, gapAcross: 0, gapAlong: 0, towards: ['right', 'lead'] } as const;
    expect(repeat({ w: 1, h: 1 }, once)).toEqual([]);
  });
});
