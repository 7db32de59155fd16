import { describe, expect, it } from 'vitest';
import { placeBlock, registerDirection } from '../../../shared/layout/centring.ts';

const sheet = { w: 792, h: 1224 };
const usable = { x: 9, y: 21.6, w: 774, h: 1188 };
const block = { w: 756, h: 1044 };

describe('the block', () => {
  it('lies in the middle of the sheet', () => {
    expect(placeBlock(block, usable, sheet, { across: 'centre', along: 'centre' })).toEqual({ x: 18, y: 90 });
  });

  it('lies as near an edge as the printer can print', () => {
    expect(placeBlock(block, usable, sheet, { across: 'left', along: 'lead' })).toEqual({
      x: 9,
      y: 21.6 + 1188 - 1044,
    });
    expect(placeBlock(block, usable, sheet, { across: 'right', along: 'tail' })).toEqual({ x: 27, y: 21.6 });
  });

  it('keeps out of the unprintable border before it keeps to the middle', () => {
    expect(placeBlock({ w: 756, h: 1184 }, usable, sheet, { across: 'centre', along: 'centre' }).y).toBe(
      21.6,
    );
    const high = { x: 9, y: 9, w: 774, h: 1188 };
    expect(placeBlock({ w: 756, h: 1188 }, high, sheet, { across: 'centre', along: 'centre' }).y).toBe(9);
  });

  it('must be centred across the feed when turned side to side, along it when turned end to end', () => {
    expect(registerDirection('side-to-side')).toBe('across');
    expect(registerDirection('end-to-end')).toBe('along');
  });
});
