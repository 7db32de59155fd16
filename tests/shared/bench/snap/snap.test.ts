import { describe, expect, it } from 'vitest';
import type { SnapTarget } from '../../../../shared/bench/snap/guide.ts';
import { snap } from '../../../../shared/bench/snap/snap.ts';

const card = { x: 100, y: 200, w: 50, h: 70 };

const target = (at: number, rest: Partial<SnapTarget> = {}): SnapTarget => ({
  kind: 'in-line',
  axis: 'x',
  at,
  name: `at ${at}`,
  lines: [at],
  gaps: [],
  ...rest,
});

const names = (targets: readonly SnapTarget[], reach = 10) =>
  snap(card, targets, reach).guides.map((g) => g.name);

describe('snapping', () => {
  it('leaves a piece where the hand put it when nothing is near', () => {
    expect(snap(card, [target(111)], 10)).toEqual({ dx: 0, dy: 0, guides: [] });
  });

  it('draws a piece to a place just within reach, from either side', () => {
    expect(snap(card, [target(110)], 10).dx).toBe(10);
    expect(snap(card, [target(90)], 10).dx).toBe(-10);
  });

  it('takes the nearest of several places', () => {
    expect(snap(card, [target(93), target(104), target(108)], 10)).toEqual({
      dx: 4,
      dy: 0,
      guides: [{ kind: 'in-line', name: 'at 104', axis: 'x', lines: [104], gaps: [] }],
    });
  });

  it('holds across and along the feed independently', () => {
    const along = target(203, { axis: 'y', name: 'along' });
    const held = snap(card, [target(104), along], 10);
    expect([held.dx, held.dy]).toEqual([4, 3]);
    expect(held.guides.map((g) => g.name)).toEqual(['at 104', 'along']);
  });

  it('names the weightier first where two mean the same place', () => {
    const margins = target(104, { kind: 'equal-margins', name: 'equal side margins' });
    const centre = target(104, { kind: 'sheet-centre', name: 'sheet centre' });
    expect(names([target(104), centre, margins])).toEqual(['equal side margins', 'sheet centre', 'at 104']);
  });

  it('prefers the weightier of two that are equally far', () => {
    const margins = target(96, { kind: 'equal-margins', name: 'equal side margins' });
    expect(snap(card, [target(104), margins], 10).dx).toBe(-4);
  });

  it('names one kind once, however many pieces offer the same place', () => {
    expect(names([target(104, { name: 'one' }), target(104, { name: 'other' })])).toEqual(['one']);
  });

  it('counts places that differ by less than can be cut as the same', () => {
    expect(names([target(104), target(104.009, { kind: 'gutter', name: 'gutter' })])).toEqual([
      'gutter',
      'at 104',
    ]);
    expect(names([target(104), target(104.02, { kind: 'gutter', name: 'gutter' })])).toEqual(['at 104']);
  });

  it('heeds a neighbour only while the piece lies beside it', () => {
    const beside = target(104, { beside: { from: 0, to: 200 } });
    expect(names([beside])).toEqual([]);
    expect(names([{ ...beside, beside: { from: 0, to: 201 } }])).toEqual(['at 104']);
    expect(names([{ ...beside, beside: { from: 270, to: 300 } }])).toEqual([]);
    expect(names([{ ...beside, beside: { from: 269, to: 300 } }])).toEqual(['at 104']);
    const along = target(203, { axis: 'y', name: 'along', beside: { from: 140, to: 160 } });
    expect(names([along])).toEqual(['along']);
    expect(names([{ ...along, beside: { from: 150, to: 160 } }])).toEqual([]);
  });
});
