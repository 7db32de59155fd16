import { describe, expect, it } from 'vitest';
import { HEADS, headBehind, headOf, liesOnItsSide, lying } from '../../../shared/geometry/head.ts';
import { printableArea, usableArea } from '../../../shared/geometry/sheet.ts';
import { lookFromBehind, seenFromBehind } from '../../../shared/geometry/turn.ts';
import { hasOneForm, turnOf, WORK_STYLES } from '../../../shared/geometry/work.ts';
import turns from '../../reference/turns.json' with { type: 'json' };

const tabloid = { w: 792, h: 1224 };
const border = { lead: 14.4, tail: 21.6, left: 9, right: 12 };

describe('the printable area', () => {
  it('leaves out the border, lead edge at the top', () => {
    expect(printableArea(tabloid, border)).toEqual({ x: 9, y: 21.6, w: 771, h: 1188 });
  });

  it('is all of it on one side only', () => {
    expect(usableArea(tabloid, border, undefined)).toEqual({ x: 9, y: 21.6, w: 771, h: 1188 });
  });

  it('loses the wider side border on both sides when turned side to side', () => {
    expect(usableArea(tabloid, border, 'side-to-side')).toEqual({ x: 12, y: 21.6, w: 768, h: 1188 });
  });

  it('loses the longer of lead and tail at both ends when turned end to end', () => {
    const usable = usableArea(tabloid, border, 'end-to-end')!;
    expect(usable.x).toBe(9);
    expect(usable.y).toBeCloseTo(21.6, 9);
    expect(usable.w).toBe(771);
    expect(usable.h).toBeCloseTo(1224 - 2 * 21.6, 9);
  });

  it('is nothing when the border eats the sheet', () => {
    expect(usableArea(tabloid, { ...border, left: 780 }, undefined)).toBeUndefined();
    expect(usableArea(tabloid, { ...border, lead: 1203 }, 'end-to-end')).toBeUndefined();
    expect(usableArea(tabloid, { ...border, left: 400 }, 'side-to-side')).toBeUndefined();
    expect(usableArea(tabloid, { ...border, left: 780 }, 'side-to-side')).toBeUndefined();
  });
});

describe('turning', () => {
  const named = (name: 'Flip180' | 'Flip0') => {
    const at = { 0: 0, w: tabloid.w, h: tabloid.h } as const;
    const [a, b, c, d, e, f] = turns.orientation_matrices[name].map((n) =>
      typeof n === 'string' ? at[n as 'w' | 'h'] : n,
    );
    return { a, b, c, d, e, f };
  };

  it('is the orientation Flip180 side to side and Flip0 end to end', () => {
    // CIP4 JDF 1.x, table 2-4, orientation matrices of the press coordinate system.
    expect(lookFromBehind('side-to-side', tabloid)).toEqual(named('Flip180'));
    expect(lookFromBehind('end-to-end', tabloid)).toEqual(named('Flip0'));
  });

  it('keeps the lead edge and swaps the sides, or the other way about', () => {
    const byTheLeadLeft = { x: 0, y: 1124, w: 50, h: 100 };
    expect(seenFromBehind(byTheLeadLeft, 'side-to-side', tabloid)).toEqual({
      x: 742,
      y: 1124,
      w: 50,
      h: 100,
    });
    expect(seenFromBehind(byTheLeadLeft, 'end-to-end', tabloid)).toEqual({ x: 0, y: 0, w: 50, h: 100 });
  });
});

describe('heads', () => {
  it('come in quarter turns, and any other angle is a mistake of ours', () => {
    expect([-450, -90, 0, 90, 360, 540].map(headOf)).toEqual([270, 270, 0, 90, 0, 180]);
    expect(() => headOf(45)).toThrow('45 degrees is not a whole number of quarter turns');
    expect(HEADS).toEqual([0, 90, 180, 270]);
  });

  it('lie along the feed or on the side', () => {
    expect(HEADS.map(liesOnItsSide)).toEqual([false, true, false, true]);
    expect(HEADS.map((h) => lying({ w: 360, h: 504 }, h).w)).toEqual([360, 504, 360, 504]);
    expect(lying({ w: 360, h: 504 }, 90)).toEqual({ w: 504, h: 360 });
  });

  it('keep their direction on an upright card turned like a page, side to side', () => {
    // A turn about the feed direction keeps head-to-head pieces as they are: common practice, no source.
    expect(headBehind(0, 'side-to-side', 'head-to-head')).toBe(0);
    expect(headBehind(0, 'end-to-end', 'head-to-head')).toBe(180);
    expect(headBehind(0, 'side-to-side', 'head-to-toe')).toBe(180);
    expect(headBehind(0, 'end-to-end', 'head-to-toe')).toBe(0);
  });
});

describe('work styles', () => {
  it('are those of the open job ticket', () => {
    // CIP4 XJDF 2.x, enumeration WorkStyle.
    const ticket = turns.work_styles;
    const spelled = WORK_STYLES.map((s) =>
      s.replace(/(^|-)(\w)/g, (_all, _dash, letter: string) => letter.toUpperCase()),
    );
    expect([...spelled].sort()).toEqual([...ticket].sort());
  });

  it('know their turn and their number of forms', () => {
    expect(turnOf({ style: 'simplex' })).toBeUndefined();
    expect(turnOf({ style: 'work-and-turn' })).toBe('side-to-side');
    expect(turnOf({ style: 'work-and-tumble' })).toBe('end-to-end');
    expect(turnOf({ style: 'perfecting', turn: 'end-to-end' })).toBe('end-to-end');
    expect(turnOf({ style: 'work-and-back', turn: 'side-to-side' })).toBe('side-to-side');
    expect(hasOneForm({ style: 'work-and-turn' })).toBe(true);
    expect(hasOneForm({ style: 'work-and-tumble' })).toBe(true);
    expect(hasOneForm({ style: 'work-and-back', turn: 'side-to-side' })).toBe(false);
    expect(hasOneForm({ style: 'simplex' })).toBe(false);
  });
});
