import { describe, expect, it } from 'vitest';
import { headOfType, standsOnItsHead } from '../../../shared/bench/typeStands.ts';

describe('the type on a page', () => {
  it('says which way its head is', () => {
    expect(headOfType([{ letters: 40, angle: 0 }])).toBe(0);
    expect(headOfType([{ letters: 40, angle: 180 }])).toBe(180);
    expect(headOfType([{ letters: 40, angle: -180 }])).toBe(180);
    expect(headOfType([{ letters: 40, angle: -90 }])).toBe(270);
  });

  it('counts lines that lean a little to the nearest quarter', () => {
    expect(headOfType([{ letters: 40, angle: 340 }])).toBe(0);
    expect(headOfType([{ letters: 40, angle: 200 }])).toBe(180);
    expect(headOfType([{ letters: 40, angle: 201 }])).toBeUndefined();
    expect(headOfType([{ letters: 40, angle: 45 }])).toBeUndefined();
  });

  it('goes by most of the letters, not by a few', () => {
    const most = [
      { letters: 30, angle: 180 },
      { letters: 10, angle: 0 },
    ];
    expect(headOfType(most)).toBe(180);
    expect(headOfType([...most, { letters: 1, angle: 0 }])).toBeUndefined();
  });

  it('says nothing where there is too little type', () => {
    expect(headOfType([{ letters: 7, angle: 0 }])).toBeUndefined();
    expect(headOfType([{ letters: 8, angle: 0 }])).toBe(0);
    expect(headOfType([])).toBeUndefined();
  });

  it('stands on its head unless the brief turns the page', () => {
    expect(standsOnItsHead(180, 0)).toBe(true);
    expect(standsOnItsHead(180, 180)).toBe(false);
    expect(standsOnItsHead(0, 180)).toBe(true);
    expect(standsOnItsHead(90, 90)).toBe(true);
    expect(standsOnItsHead(90, 0)).toBe(false);
    expect(standsOnItsHead(undefined, 180)).toBe(false);
  });
});
