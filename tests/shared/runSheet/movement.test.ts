// The turn as the hand makes it, drawn and told, agrees with paper that is turned in space.
import { describe, expect, it } from 'vitest';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { PathShape } from '../../../shared/pdf/document/shape.ts';
import { drawMovement, movementOf, sayMovement } from '../../../shared/runSheet/movement.ts';
import { print, turned } from '../../kit/paper.ts';
import { MEASURES } from '../../kit/setPapers.ts';
import { extentOf, liesApart, liesIn, pathsIn, pointsOf, roomOf, wordsIn } from '../../kit/shapes.ts';

const SHEET = { w: 320, h: 450 };
const TURNS: readonly Turn[] = ['side-to-side', 'end-to-end'];

/** Which point of the paper lies at this point of the table once the sheet is turned. */
function paperUnder(turn: Turn, size: typeof SHEET, { x, y }: { x: number; y: number }) {
  const dot = { art: 'dot', trim: { x: x - 1, y: y - 1, w: 2, h: 2 }, head: 0 };
  const [head, foot] = print([dot], turned(turn, size.w, size.h));
  return { x: (head!.at[0] + foot!.at[0]) / 2, y: (head!.at[1] + foot!.at[1]) / 2 };
}

describe('the movement of the turn', () => {
  it.each(TURNS)('lays the edge that is taken where paper turned %s has it', (turn) => {
    const { take, lay, axis } = movementOf(turn, SHEET);
    const under = paperUnder(turn, SHEET, lay);
    expect(under.x).toBeCloseTo(take.x);
    expect(under.y).toBeCloseTo(take.y);
    // What lies on the axis stays where it is.
    for (const end of axis) {
      expect(paperUnder(turn, SHEET, end).x).toBeCloseTo(end.x);
      expect(paperUnder(turn, SHEET, end).y).toBeCloseTo(end.y);
    }
  });

  it.each(TURNS)('is drawn from the edge that is taken to where it is laid down, turned %s', (turn) => {
    const { shapes } = drawMovement(turn, SHEET, false, 112, MEASURES);
    const paths = shapes.filter((shape): shape is PathShape => shape.kind === 'path');
    const arc = paths.find(({ contours }) => contours.some((c) => c.along.some((step) => 'to' in step)))!;
    const tip = paths[paths.indexOf(arc) + 1]!.contours[0]!.from;
    const [sheet] = paths.map(({ contours }) => contours[0]!);
    const corners = [sheet!.from, ...(sheet!.along as { x: number; y: number }[])];
    const left = Math.min(...corners.map((c) => c.x));
    const bottom = Math.min(...corners.map((c) => c.y));
    const size = {
      w: Math.max(...corners.map((c) => c.x)) - left,
      h: Math.max(...corners.map((c) => c.y)) - bottom,
    };
    expect(size.w / size.h).toBeCloseTo(SHEET.w / SHEET.h);
    const start = arc.contours[0]!.from;
    const under = paperUnder(turn, size, { x: tip.x - left, y: tip.y - bottom });
    expect(under.x).toBeCloseTo(start.x - left);
    expect(under.y).toBeCloseTo(start.y - bottom);
  });

  it.each(TURNS)(
    'shows the edge that is taken nearer to the eye than the one left lying, turned %s',
    (turn) => {
      const { shapes } = drawMovement(turn, SHEET, false, 112, MEASURES);
      const lifted = shapes.find((s): s is PathShape => s.kind === 'path' && s.fill === 'pale')!.contours[0]!;
      const [a, b, c, d] = [lifted.from, ...(lifted.along as { x: number; y: number }[])];
      const long = (p = { x: 0, y: 0 }, q = { x: 0, y: 0 }) => Math.hypot(p.x - q.x, p.y - q.y);
      // The corners go round from the lower left: right edge b to c, left edge d to a, tail a to b, lead edge c to d.
      const [taken, other] = turn === 'side-to-side' ? [long(b, c), long(d, a)] : [long(a, b), long(c, d)];
      expect(taken).toBeGreaterThan(other);
    },
  );

  it('is told in the words of hands', () => {
    expect(sayMovement('side-to-side')).toBe('Take the right edge and lay it over to the left, like a page.');
    expect(sayMovement('end-to-end')).toBe('Take the tail and lay it over to the top, end to end.');
  });

  it('is left to the printer where it turns the sheet itself', () => {
    const words = (itself: boolean) =>
      drawMovement('end-to-end', SHEET, itself, 112, MEASURES)
        .shapes.flatMap((shape) => (shape.kind === 'words' ? [shape.words] : []))
        .join(' ');
    expect(words(true)).toBe('The printer turns it Nothing to do by hand.');
    expect(words(false)).toContain('TURN Take the tail');
  });

  const SIZES = [SHEET, { w: 450, h: 320 }, { w: 300, h: 300 }];
  const drawn = TURNS.flatMap((turn) => SIZES.map((size) => [turn, size] as const));

  it.each(drawn)('is drawn in the middle of its block, turned %s: %j', (turn, size) => {
    const { w, h, shapes } = drawMovement(turn, size, false, 112, MEASURES);
    const [sheet] = pathsIn(shapes).map(extentOf) as [ReturnType<typeof extentOf>];
    expect(w).toBe(112);
    expect(sheet.left + sheet.right).toBeCloseTo(112);
    expect(Math.max(sheet.right - sheet.left, sheet.top - sheet.bottom)).toBeCloseTo(84);
    for (const words of wordsIn(shapes)) {
      const room = roomOf(words);
      expect(room.left + room.right).toBeCloseTo(112);
      expect(liesIn(room, { left: 0, right: 112, bottom: -h, top: 0 })).toBe(true);
      for (const path of pathsIn(shapes)) expect(liesApart(room, extentOf(path))).toBe(true);
    }
    expect(Math.min(...wordsIn(shapes).map((words) => roomOf(words).bottom))).toBeCloseTo(-h);
    for (const path of pathsIn(shapes)) {
      expect(liesIn(extentOf(path), { left: 0, right: 112, bottom: -h, top: 0 })).toBe(true);
    }
  });

  it.each(drawn)('has its axis reach beyond the sheet at both ends, turned %s: %j', (turn, size) => {
    const { shapes } = drawMovement(turn, size, false, 112, MEASURES);
    const [sheet] = pathsIn(shapes).map(extentOf) as [ReturnType<typeof extentOf>];
    const axis = extentOf(pathsIn(shapes).find(({ stroke }) => stroke?.dash !== undefined)!);
    const [x, y] = [(sheet.left + sheet.right) / 2, (sheet.bottom + sheet.top) / 2];
    const wanted =
      turn === 'side-to-side'
        ? [x, x, sheet.bottom - 7, sheet.top + 7]
        : [sheet.left - 7, sheet.right + 7, y, y];
    [axis.left, axis.right, axis.bottom, axis.top].forEach((at, i) => {
      expect(at).toBeCloseTo(wanted[i]!);
    });
  });

  it.each(drawn)('has an arc from the dot of the hand to the tip, clear of the axis: %s %j', (turn, size) => {
    const paths = pathsIn(drawMovement(turn, size, false, 112, MEASURES).shapes);
    const [sheet] = paths.map(extentOf) as [ReturnType<typeof extentOf>];
    const arc = paths.find(({ contours }) => contours[0]!.along.some((step) => 'to' in step))!;
    const [bend] = arc.contours[0]!.along as [
      { c1: { x: number; y: number }; c2: { x: number; y: number }; to: { x: number; y: number } },
    ];
    const { from } = arc.contours[0]!;
    const [tip, dot] = [paths[paths.indexOf(arc) + 1]!, extentOf(paths.at(-1)!)];
    expect(
      [(dot.left + dot.right) / 2 - from.x, (dot.bottom + dot.top) / 2 - from.y].map((n) => n.toFixed(6)),
    ).toEqual(['0.000000', '0.000000']);
    expect(dot.right - dot.left).toBeCloseTo(7);
    const [point, one, other] = pointsOf(tip);
    const foot = { x: (one!.x + other!.x) / 2, y: (one!.y + other!.y) / 2 };
    // The arc ends where the tip begins, and both go the same way: onto the edge, from above the paper.
    expect(Math.hypot(bend.to.x - foot.x, bend.to.y - foot.y)).toBeCloseTo(0);
    expect(Math.hypot(foot.x - point!.x, foot.y - point!.y)).toBeCloseTo(7);
    const lie = turn === 'side-to-side' ? 'y' : 'x';
    const other2 = lie === 'y' ? 'x' : 'y';
    expect(foot[lie]).toBeGreaterThan(point![lie]);
    expect(foot[other2]).toBeCloseTo(point![other2]);
    expect(Math.abs(one![other2] - other![other2])).toBeCloseTo(2 * 7 * 0.65);
    // Straight up from the hand, straight down onto the edge, and well over what is between.
    expect(bend.c1[other2]).toBeCloseTo(from[other2]);
    expect(bend.c2[other2]).toBeCloseTo(bend.to[other2]);
    const across = turn === 'side-to-side' ? sheet.right - sheet.left : sheet.top - sheet.bottom;
    expect(bend.c1[lie] - from[lie]).toBeGreaterThan(across / 2);
    expect(bend.c2[lie] - bend.to[lie]).toBeCloseTo(bend.c1[lie] - from[lie]);
  });

  it.each(drawn)('lifts the sheet about the axis, which stays where it is: %s %j', (turn, size) => {
    const paths = pathsIn(drawMovement(turn, size, false, 112, MEASURES).shapes);
    const sheet = extentOf(paths[0]!);
    const corners = pointsOf(paths.find(({ fill }) => fill === 'pale')!);
    const [a, b, c, d] = corners;
    const middle = { x: (sheet.left + sheet.right) / 2, y: (sheet.bottom + sheet.top) / 2 };
    // Where the diagonals cross is the middle of the sheet, which lies on the axis.
    const cross = crossing(a!, c!, b!, d!);
    expect(cross.x).toBeCloseTo(middle.x);
    expect(cross.y).toBeCloseTo(middle.y);
    const mirrored = (p: { x: number; y: number }, q: { x: number; y: number }) =>
      turn === 'side-to-side'
        ? Math.abs(p.x - q.x) + Math.abs(p.y + q.y - 2 * middle.y)
        : Math.abs(p.y - q.y) + Math.abs(p.x + q.x - 2 * middle.x);
    const pairs =
      turn === 'side-to-side'
        ? [
            [a, d],
            [b, c],
          ]
        : [
            [a, b],
            [d, c],
          ];
    for (const [p, q] of pairs) expect(mirrored(p!, q!)).toBeCloseTo(0);
  });

  it('is called what it is, in strong letters above the drawing', () => {
    const title = (itself: boolean) => {
      const [said] = wordsIn(drawMovement('side-to-side', SHEET, itself, 112, MEASURES).shapes);
      return [said!.words, said!.weight, roomOf(said!).top];
    };
    expect(title(false)).toEqual(['TURN', 'strong', 0]);
    expect(title(true)).toEqual(['The printer', 'strong', 0]);
  });
});

type Spot = { readonly x: number; readonly y: number };

/** Where the line from a to c meets the line from b to d. */
function crossing(a: Spot, c: Spot, b: Spot, d: Spot): Spot {
  const [ux, uy, vx, vy] = [c.x - a.x, c.y - a.y, d.x - b.x, d.y - b.y];
  const t = ((b.x - a.x) * vy - (b.y - a.y) * vx) / (ux * vy - uy * vx);
  return { x: a.x + t * ux, y: a.y + t * uy };
}
