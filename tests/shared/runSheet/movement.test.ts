// The turn as the hand makes it, drawn and told, agrees with paper that is turned in space.
import { describe, expect, it } from 'vitest';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { PathShape } from '../../../shared/pdf/document/shape.ts';
import { drawMovement, movementOf, sayMovement } from '../../../shared/runSheet/movement.ts';
import { print, turned } from '../../kit/paper.ts';
import { MEASURES } from '../../kit/setPapers.ts';

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
});
