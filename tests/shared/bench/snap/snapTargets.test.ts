import { describe, expect, it } from 'vitest';
import type { DraggedBox, Neighbour } from '../../../../shared/bench/snap/dragged.ts';
import type { GuideKind, SnapTarget } from '../../../../shared/bench/snap/guide.ts';
import { snapTargets } from '../../../../shared/bench/snap/snapTargets.ts';
import type { Work } from '../../../../shared/geometry/work.ts';

// A 5 x 7 in card with 1/8 in bleed on an 11 x 17 in sheet.
const size = { w: 792, h: 1224 };
const card = { w: 360, h: 504 };
const unprintable = { lead: 14.4, tail: 21.6, left: 9, right: 9 };
const loose: DraggedBox = { size: card, bleed: 9, partnered: false };
const partnered: DraggedBox = { ...loose, partnered: true };
const sheetTurn: Work = { style: 'work-and-back', turn: 'side-to-side' };

const neighbour = (x: number, y: number, name = 'position 2'): Neighbour => ({
  trim: { x, y, ...card },
  name,
});

function targets(
  work: Work,
  dragged: DraggedBox,
  others: readonly Neighbour[],
  kind: GuideKind,
  axis: 'x' | 'y' = 'x',
): readonly SnapTarget[] {
  return snapTargets(dragged, others, { size, unprintable, work }, 18, 'in').filter(
    (t) => t.kind === kind && t.axis === axis,
  );
}

const places = (found: readonly SnapTarget[]) => found.map((t) => t.at);

describe('equal margins on the edges that register', () => {
  it('are the middle of the sheet for a piece alone', () => {
    expect(targets(sheetTurn, loose, [], 'equal-margins')).toEqual([
      {
        kind: 'equal-margins',
        axis: 'x',
        at: 216,
        name: 'equal side margins',
        lines: [216, 576],
        gaps: [
          { from: 0, to: 216 },
          { from: 576, to: 792 },
        ],
      },
    ]);
  });

  it('match the margin of the piece that rests at the left', () => {
    const [found, ...more] = targets(sheetTurn, loose, [neighbour(30, 0)], 'equal-margins');
    expect(more).toEqual([]);
    expect(found?.at).toBe(792 - 30 - 360);
    expect(found?.gaps).toEqual([
      { from: 0, to: 30 },
      { from: 762, to: 792 },
    ]);
  });

  it('match the margin of the piece that rests at the right', () => {
    expect(places(targets(sheetTurn, loose, [neighbour(410, 0)], 'equal-margins'))).toEqual([22]);
  });

  it('are flush with a block whose margins are equal already', () => {
    const block = [neighbour(27, 0), neighbour(405, 0)];
    expect(places(targets(sheetTurn, loose, block, 'equal-margins'))).toEqual([405, 27]);
  });

  it('are lead and tail when the sheet turns end to end', () => {
    const work: Work = { style: 'perfecting', turn: 'end-to-end' };
    const [found] = targets(work, loose, [], 'equal-margins', 'y');
    expect([found?.at, found?.name]).toEqual([360, 'equal lead and tail margins']);
    expect(targets(work, loose, [], 'equal-margins', 'x')).toEqual([]);
  });

  it('hold by themselves for a piece whose partner follows, so they name no place', () => {
    expect(targets({ style: 'work-and-turn' }, partnered, [], 'equal-margins')).toEqual([]);
  });

  it('mean nothing on a sheet printed on one side', () => {
    expect(targets({ style: 'simplex' }, loose, [], 'equal-margins')).toEqual([]);
  });
});

describe('the printable edges', () => {
  it('hold the bleed, on both sides of a turned sheet', () => {
    // End to end the wider of lead and tail counts on both.
    const work: Work = { style: 'work-and-back', turn: 'end-to-end' };
    expect(places(targets(work, loose, [], 'printable-edge', 'y'))).toEqual([
      21.6 + 9,
      1224 - 21.6 - 9 - 504,
    ]);
    expect(targets(work, loose, [], 'printable-edge', 'y').map((t) => t.name)).toEqual([
      'printable edge (tail)',
      'printable edge (lead)',
    ]);
  });

  it('are told by where they lie', () => {
    const found = targets(sheetTurn, loose, [], 'printable-edge');
    expect(found.map((t) => [t.at, t.lines, t.name])).toEqual([
      [18, [9], 'printable edge (left)'],
      [792 - 9 - 9 - 360, [783], 'printable edge (right)'],
    ]);
  });

  it('are not there when the printer can print nowhere', () => {
    const all = { lead: 700, tail: 700, left: 9, right: 9 };
    const found = snapTargets(loose, [], { size, unprintable: all, work: sheetTurn }, 18, 'in');
    expect(found.some((t) => t.kind === 'printable-edge')).toBe(false);
    expect(found.some((t) => t.kind === 'sheet-centre')).toBe(true);
  });
});

describe('the middle of the sheet', () => {
  it('is offered across and along the feed', () => {
    const [across] = targets(sheetTurn, loose, [], 'sheet-centre');
    const [along] = targets(sheetTurn, loose, [], 'sheet-centre', 'y');
    expect([across?.at, across?.lines, across?.name]).toEqual([216, [396], 'sheet centre across the feed']);
    expect([along?.at, along?.lines, along?.name]).toEqual([360, [612], 'sheet centre along the feed']);
  });

  it('is not offered where a piece would lie on its own partner', () => {
    expect(targets({ style: 'work-and-turn' }, partnered, [], 'sheet-centre')).toEqual([]);
    expect(places(targets({ style: 'work-and-turn' }, partnered, [], 'sheet-centre', 'y'))).toEqual([360]);
  });
});

describe('a neighbour', () => {
  it('is kept a gutter away on either side', () => {
    const found = targets(sheetTurn, loose, [neighbour(400, 100)], 'gutter');
    expect(found.map((t) => [t.at, t.gaps, t.beside])).toEqual([
      [778, [{ from: 760, to: 778 }], { from: 100, to: 604 }],
      [22, [{ from: 382, to: 400 }], { from: 100, to: 604 }],
    ]);
    expect(found[0]?.name).toBe('gutter of 0.25 in to position 2');
    expect(found[1]?.lines).toEqual([382, 400]);
  });

  it('is kept a gutter away along the feed too', () => {
    const found = targets(sheetTurn, loose, [neighbour(400, 100)], 'gutter', 'y');
    expect(found.map((t) => [t.at, t.beside])).toEqual([
      [622, { from: 400, to: 760 }],
      [-422, { from: 400, to: 760 }],
    ]);
  });

  it('is kept in line with by either edge and by the middle', () => {
    const small: DraggedBox = { ...loose, size: { w: 100, h: 504 } };
    const found = targets(sheetTurn, small, [neighbour(400, 100)], 'in-line');
    expect(found.map((t) => [t.at, t.lines])).toEqual([
      [400, [400]],
      [660, [760]],
      [530, [580]],
    ]);
    expect(found[0]?.name).toBe('in line with position 2');
  });

  it('has its mirror across the axis of the turn', () => {
    const small: DraggedBox = { ...loose, size: { w: 100, h: 504 } };
    const found = targets(sheetTurn, small, [neighbour(400, 100)], 'mirror');
    // The card from 400 to 760 falls on 32 to 392 behind.
    expect(found.map((t) => [t.at, t.lines])).toEqual([
      [32, [32, 396, 760]],
      [292, [392, 396, 400]],
    ]);
    expect(found[0]?.name).toBe('mirror of position 2');
    expect(targets(sheetTurn, small, [neighbour(400, 100)], 'mirror', 'y')).toEqual([]);
  });

  it('of a piece can be its own partner, a gutter away across the middle', () => {
    const found = targets({ style: 'work-and-turn' }, partnered, [], 'gutter');
    expect(found.map((t) => [t.at, t.lines, t.gaps, t.name])).toEqual([
      [405, [387, 405], [{ from: 387, to: 405 }], 'gutter of 0.25 in to its partner'],
      [27, [387, 405], [{ from: 387, to: 405 }], 'gutter of 0.25 in to its partner'],
    ]);
    expect(targets({ style: 'work-and-tumble' }, partnered, [], 'gutter', 'y').map((t) => t.at)).toEqual([
      621, 99,
    ]);
  });
});
