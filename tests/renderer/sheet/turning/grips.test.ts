import { expect, it } from 'vitest';
import { gripAt, gripFor, handFrom } from '../../../../renderer/sheet/turning/grips.ts';

// Paper of 200 x 300 px that lies with its upper left at (100, 50): its middle is at (200, 200).
const lying = { x: 100, y: 50, w: 200, h: 300 };

it('a hand takes the paper by an edge, so far from the axis as it took it', () => {
  expect(gripAt('right', { x: 296, y: 70 }, lying)).toEqual({ axis: 'x', end: 1, grabbed: 96 });
  expect(gripAt('left', { x: 90, y: 70 }, lying)).toEqual({ axis: 'x', end: -1, grabbed: 110 });
  expect(gripAt('tail', { x: 120, y: 345 }, lying)).toEqual({ axis: 'y', end: 1, grabbed: 145 });
  expect(gripAt('lead', { x: 120, y: 44 }, lying)).toEqual({ axis: 'y', end: -1, grabbed: 156 });
});

it('a hand that takes it beyond the axis still holds something', () => {
  expect(gripAt('right', { x: 150, y: 70 }, lying).grabbed).toBe(1);
});

it('paper that turns by itself goes by its right edge or its tail', () => {
  expect(gripFor('side-to-side', lying)).toEqual({ axis: 'x', end: 1, grabbed: 100 });
  expect(gripFor('end-to-end', lying)).toEqual({ axis: 'y', end: 1, grabbed: 150 });
});

it('the hand is counted from the axis towards where it took the paper', () => {
  expect(handFrom({ x: 150, y: 0 }, { axis: 'x', end: 1 }, lying)).toBe(-50);
  expect(handFrom({ x: 150, y: 0 }, { axis: 'x', end: -1 }, lying)).toBe(50);
  expect(handFrom({ x: 0, y: 260 }, { axis: 'y', end: 1 }, lying)).toBe(60);
});
