import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bleedAreas } from '../../../shared/layout/bleeds.ts';
import { BleedLaw } from '../../kit/bleedLaw.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { grids } from '../../kit/grids.ts';
import { type Placed, staggered } from '../../kit/staggered.ts';

type Box = Placed['trim'];

/** Cells narrower than this are passed over, in pt: three times what counts as the same length. */
const HAIR_PT = 0.03;

const isIn = ({ x, y, w, h }: Box, px: number, py: number) => px > x && px < x + w && py > y && py < y + h;

/** The middles between the lines that lie from one place to another, but for gaps of a hair. */
function middles(lines: readonly number[], from: number, to: number): readonly number[] {
  const stops = [from, ...lines.filter((line) => line > from && line < to), to].sort((a, b) => a - b);
  return stops.flatMap((stop, i) => {
    const next = stops[i + 1];
    return next === undefined || next - stop < HAIR_PT ? [] : [(stop + next) / 2];
  });
}

/** Where an area and the law differ: a point in every cell of the lines of both, within the whole bleed of each card. */
function differences(placed: readonly Placed[]): readonly string[] {
  const law = new BleedLaw(placed);
  const areas = bleedAreas<'side1'>(placed);
  const { xs, ys } = law.lines();
  return placed.flatMap(({ trim, bleed }, i) => {
    const area = areas[i]!;
    const [left, right] = [trim.x - bleed, trim.x + trim.w + bleed];
    const [bottom, top] = [trim.y - bleed, trim.y + trim.h + bleed];
    const acrossAll = [...xs, ...area.flatMap((r) => [r.x, r.x + r.w])];
    const upAll = [...ys, ...area.flatMap((r) => [r.y, r.y + r.h])];
    const found: string[] = area.some(
      (r) => r.x < left - 1e-6 || r.x + r.w > right + 1e-6 || r.y < bottom - 1e-6 || r.y + r.h > top + 1e-6,
    )
      ? [`card ${i} is printed beyond its bleed`]
      : [];
    for (const x of middles(acrossAll, left, right)) {
      for (const y of middles(upAll, bottom, top)) {
        const times = area.filter((r) => isIn(r, x, y)).length;
        const wanted = law.prints(i, x, y) ? 1 : 0;
        if (times !== wanted) found.push(`card ${i} prints (${x}, ${y}) ${times} times, not ${wanted}`);
      }
    }
    return found;
  });
}

describe('The printed areas are those of the law, point by point', () => {
  it('in rows and columns, with places left empty, other bleeds, and a card off its place', () => {
    fc.assert(
      fc.property(grids, (placed) => {
        expect(differences(placed)).toEqual([]);
      }),
      drawnCases(200),
    );
  });

  it('on staggered sheets', () => {
    fc.assert(
      fc.property(staggered, (placed) => {
        expect(differences(placed)).toEqual([]);
      }),
    );
  });

  it('where two cards lie over each other: what neither of them wants is printed by their neighbour', () => {
    const card = (x: number, bleed: number): Placed => ({ trim: { x, y: 100, w: 100, h: 200 }, bleed });
    expect(differences([card(100, 9), card(206, 4), card(206, 4)])).toEqual([]);
  });
});
