// What holds for every plan: nothing is lost of paper, pieces, time and money, and what is dearer never costs less.
import { describe, expect, it } from 'vitest';
import { TABLE_BRIEF } from '../../../electron/demo/briefs.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { costCandidates } from '../../../shared/plan/costCandidates.ts';
import { type LaidPlan, layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { RANKINGS, rank } from '../../../shared/plan/rank.ts';
import type { WhatIf } from '../../../shared/plan/whatIf.ts';
import { points } from '../../../shared/units/length.ts';
import { supperBrief } from '../../kit/briefs.ts';
import { briefOf, coverage } from '../../kit/plans.ts';

const library = startingLibrary();
const [supper, table] = [supperBrief, TABLE_BRIEF].map((written) =>
  layOutCandidates(briefOf(written), library),
) as [LaidPlan, LaidPlan];
const priced = (whatIf: WhatIf = {}) =>
  [supper, table].flatMap((plan) => costCandidates(plan, library, coverage, whatIf));
const all = priced();
/** By the job and the candidate. */
const keyOf = ({ id, count }: PlanCandidate) => `${count.yields.length} ${id}`;
const byKey = (candidates: readonly PlanCandidate[]) => new Map(candidates.map((one) => [keyOf(one), one]));

/** The area of a rectangle in pt, in m2. */
const m2 = (w: number, h: number) => w * h * (0.0254 / 72) ** 2;
const cents = (amount: number) => Math.round(amount * 100);
const near = (a: number, b: number) => Math.abs(a - b) < 1e-8;
const sumOf = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0);

/** The candidates of which a law does not hold; there should be none. */
const breaking = (holds: (one: PlanCandidate) => boolean) =>
  all.filter((one) => !holds(one)).map(({ id }) => id);

describe('every candidate', () => {
  it('is one of some hundreds, each with a name of its own, on every printer and paper', () => {
    expect(all.length).toBeGreaterThan(1000);
    expect(new Set(all.map(keyOf)).size).toBe(all.length);
    expect(new Set(all.map(({ printer }) => printer.name)).size).toBe(3);
    expect(new Set(all.map(({ paper }) => paper.name)).size).toBe(4);
    expect(new Set(all.map(({ source }) => source.is)).size).toBe(3);
  });

  it('gives as many pieces as its good sheets have positions, and no order comes short', () => {
    const isWhole = ({ count, arrangement, up }: PlanCandidate) => {
      const { needed, overs, makeReady, sheets, yields } = count;
      // Out of all sheets come positions x sheets, less what was spoiled: the overs and those of setting up.
      const spoiled = (overs + makeReady) * arrangement.length;
      return (
        sheets === needed + overs + makeReady &&
        up === arrangement.length &&
        sumOf(yields.map((one) => one.fromNeeded)) === sheets * arrangement.length - spoiled &&
        yields.every(
          (one) =>
            one.perSheet === arrangement.filter(({ piece }) => piece === one.piece).length &&
            one.leftOver === one.fromNeeded - one.wanted &&
            one.leftOver >= 0,
        ) &&
        // One sheet less would be too few of something.
        yields.some((one) => one.fromNeeded - one.perSheet < one.wanted)
      );
    };
    expect(breaking(isWhole)).toEqual([]);
  });

  it('accounts for all the paper that is bought: pieces, margins and gutters, spare pieces, offcuts', () => {
    const isAccountedFor = ({ area, source, count, size, arrangement }: PlanCandidate) => {
      const { form } = source;
      const one =
        form.is === 'roll'
          ? m2(points(form.width), 1000 * (72 / 25.4))
          : m2(points(form.size[0]), points(form.size[1]));
      const trims = sumOf(arrangement.map(({ trim }) => m2(trim.w, trim.h)));
      return (
        near(area.bought, count.bought * one) &&
        near(area.offcuts, count.bought * one - count.sheets * m2(size.w, size.h)) &&
        near(area.aroundPieces, count.sheets * (m2(size.w, size.h) - trims)) &&
        near(area.spare, count.sheets * trims - area.pieces) &&
        near(area.waste, area.offcuts + area.aroundPieces + area.spare) &&
        near(area.bought, area.pieces + area.waste) &&
        Math.min(area.offcuts, area.aroundPieces, area.spare) > -1e-9
      );
    };
    expect(breaking(isAccountedFor)).toEqual([]);
  });

  it('buys no parent sheet more than its sheets need', () => {
    const isEnough = ({ source, count }: PlanCandidate) =>
      source.is !== 'parent' ||
      (count.bought * source.out >= count.sheets && (count.bought - 1) * source.out < count.sheets);
    expect(breaking(isEnough)).toEqual([]);
  });

  it('has costs that add up to the cent and times that add up', () => {
    const addsUp = ({ cost, time, spread, ink }: PlanCandidate) => {
      const { total, ...parts } = cost;
      return (
        sumOf(Object.values(parts).map(cents)) === cents(total) &&
        Object.values(cost).every((amount) => cents(amount) / 100 === amount) &&
        spread.low <= total &&
        spread.high >= total &&
        ink.low <= ink.ml &&
        near(time.printing + time.handling + time.makeReady + time.cutting, time.total) &&
        near(time.attended + time.unattended, time.total)
      );
    };
    expect(breaking(addsUp)).toEqual([]);
  });

  it('lies on its sheet within what its printer can print, bleeds included', () => {
    const isPrintable = ({ arrangement, feed, size }: PlanCandidate) =>
      arrangement.every(
        ({ trim }) =>
          trim.x - 9 > points(feed.unprintable.left) - 0.02 &&
          trim.y - 9 > points(feed.unprintable.tail) - 0.02 &&
          trim.x + trim.w + 9 < size.w - points(feed.unprintable.right) + 0.02 &&
          trim.y + trim.h + 9 < size.h - points(feed.unprintable.lead) + 0.02,
      );
    expect(breaking(isPrintable)).toEqual([]);
  });
});

describe('what is dearer never costs less', () => {
  /** How many cost more in this part; those that cost less in all, or take another time, are none. */
  const dearer = (whatIf: WhatIf, part: 'ink' | 'makeReady') => {
    const before = byKey(all);
    const pairs = priced(whatIf).map((one) => [before.get(keyOf(one)), one] as const);
    const cheaper = pairs.filter(
      ([was, one]) =>
        was === undefined ||
        one.cost.total < was.cost.total ||
        one.cost[part] < was.cost[part] ||
        one.time.total !== was.time.total,
    );
    expect(cheaper).toEqual([]);
    return pairs.filter(([was, one]) => one.cost[part] > (was?.cost[part] ?? 0)).length;
  };

  it('ink, for the printer that it is for and for no other', () => {
    const [hand] = library.printers;
    const inkPrices = { [hand?.name ?? '']: 0.2 };
    expect(dearer({ inkPrices }, 'ink')).toBe(
      all.filter(({ printer }) => printer.name === hand?.name).length,
    );
  });

  it('labour', () => {
    expect(dearer({ labourPerHour: 60 }, 'makeReady')).toBe(all.length);
  });

  it('a larger quantity, nor does it take less time; and one sheet yields what it did', () => {
    let before = byKey(costCandidates(supper, library, coverage, { pieces: 1 }));
    for (const pieces of [2, 3, 7, 50, 51, 120, 400, 999, 1000, 1001, 4000]) {
      const now = byKey(costCandidates(supper, library, coverage, { pieces }));
      const odd = [...now].filter(([key, one]) => {
        const was = before.get(key);
        return !(
          was !== undefined &&
          one.count.pieces === pieces &&
          one.cost.total >= was.cost.total &&
          one.time.total >= was.time.total - 1e-9 &&
          one.arrangement === was.arrangement
        );
      });
      expect(odd).toEqual([]);
      before = now;
    }
  });

  it('ink by coverage, from nothing but the cleaning on blank faces to four inks all over', () => {
    const at = (total: number) => byKey(costCandidates(supper, library, () => total));
    const [blank, full] = [at(0), at(4)];
    const odd = [...blank].filter(([key, one]) => {
      const cleaning = one.printer.ink.model.base * sumOf(one.printed.map(({ area }) => area));
      const dearer = (full.get(key)?.cost.ink ?? 0) > one.cost.ink;
      return !(near(one.ink.ml, cleaning * one.count.sheets) && dearer);
    });
    expect(odd).toEqual([]);
  });

  it('ink of the face that takes it', () => {
    const backs = byKey(costCandidates(supper, library, (_piece, face) => (face === 'back' ? 2 : 0)));
    const both = byKey(costCandidates(supper, library, () => 1));
    // Fronts and backs take the same room here, so that a back of 2 and a front of 0 are as much as 1 on both.
    expect([...backs].filter(([key, one]) => !near(one.ink.ml, both.get(key)?.ink.ml ?? 0))).toEqual([]);
  });
});

describe('the order of candidates', () => {
  it.each(RANKINGS)('by %s goes up, and what is equal goes by the others', (by) => {
    const value = {
      cost: (one: PlanCandidate) => one.cost.total,
      time: (one: PlanCandidate) => one.time.total,
      waste: (one: PlanCandidate) => one.area.waste,
    };
    const ranked = rank(all, by);
    expect(new Set(ranked)).toEqual(new Set(all));
    ranked.slice(1).forEach((one, i) => {
      const before = ranked[i];
      if (before === undefined) return;
      expect(value[by](one)).toBeGreaterThan(value[by](before) - 1e-7);
      if (by !== 'cost' && Math.abs(value[by](one) - value[by](before)) < 1e-12) {
        expect(one.cost.total).toBeGreaterThanOrEqual(before.cost.total);
      }
    });
  });

  it('is by cost unless it is asked otherwise', () => {
    const candidates = costCandidates(supper, library, coverage);
    expect(rank(candidates, 'cost').map(({ id }) => id)).toEqual(candidates.map(({ id }) => id));
  });
});
