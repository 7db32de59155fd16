// Cost against quantity: the best candidate of each printer at every quantity, and where printers change places.
import { describe, expect, it } from 'vitest';
import { TABLE_BRIEF } from '../../../electron/demo/briefs.ts';
import { changesOfCheapest } from '../../../shared/plan/cheapest.ts';
import { costCandidates } from '../../../shared/plan/costCandidates.ts';
import { type CostCurve, costCurves } from '../../../shared/plan/costCurve.ts';
import { layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { supperBrief } from '../../kit/briefs.ts';
import { card, handPrinter, libraryWith, trayPrinter } from '../../kit/libraries.ts';
import { briefOf, coverage } from '../../kit/plans.ts';

const library = libraryWith({ printers: [trayPrinter, handPrinter] });
const supper = layOutCandidates(briefOf(supperBrief), library);
const curve = (printer: string, totals: readonly number[], from = 1): CostCurve => ({
  printer,
  quantities: { from, to: from + totals.length - 1 },
  totals,
  best: totals.map(() => printer),
});

describe('cost against quantity', () => {
  it('is at every quantity that of the cheapest candidate of the printer', () => {
    const quantities = { from: 37, to: 140 };
    const curves = costCurves(supper, library, coverage, quantities);
    expect(curves.map(({ printer }) => printer)).toEqual(['Tray printer', 'Hand printer']);
    for (const { printer, totals, best } of curves) {
      expect(totals).toHaveLength(104);
      for (const [i, total] of totals.entries()) {
        const all = costCandidates(supper, library, coverage, { pieces: quantities.from + i });
        const own = all.filter((one) => one.printer.name === printer);
        expect(total).toBe(own[0]?.cost.total);
        expect(own.find(({ id }) => id === best[i])?.cost.total).toBe(total);
      }
    }
  });

  it('goes up in steps of whole sheets', () => {
    const candidates = supper.candidates.filter(({ up, work }) => up === 4 && work.style === 'work-and-turn');
    const [tray] = costCurves({ ...supper, candidates }, library, coverage, { from: 1, to: 12 });
    const totals = tray?.totals ?? [];
    // Four up: 1 to 4 pieces are one sheet, 5 to 8 two, 9 to 12 three.
    expect(new Set(totals.slice(0, 4)).size).toBe(1);
    expect(new Set(totals.slice(4, 8)).size).toBe(1);
    expect(totals[4]).toBeGreaterThan(totals[3] ?? 0);
    expect(totals[8]).toBeGreaterThan(totals[7] ?? 0);
  });

  it('of several designs counts them together, each at least its share', () => {
    const brief = briefOf(TABLE_BRIEF);
    const sheets = libraryWith({ papers: [{ ...card, forms: [{ ...card.forms[0], size: '13 x 19 in' }] }] });
    const plan = layOutCandidates(brief, sheets);
    const [only] = costCurves(plan, sheets, coverage, { from: 100, to: 144 });
    // 48 menus and 96 tags are wanted; 100 together are 34 and 67.
    const [cheapest] = costCandidates(plan, sheets, coverage, { pieces: 100 });
    expect(cheapest?.count.yields.map(({ wanted }) => wanted)).toEqual([34, 67]);
    expect(only?.totals[0]).toBe(cheapest?.cost.total);
    expect(only?.totals.at(-1)).toBe(costCandidates(plan, sheets, coverage)[0]?.cost.total);
  });

  it('follows what-if prices', () => {
    const at = (whatIf: object) =>
      costCurves(supper, library, coverage, { from: 120, to: 120 }, whatIf).map(({ totals }) => totals[0]);
    const inkPrices = { 'Tray printer': 0.1 };
    expect(at({ inkPrices })[1]).toBe(at({})[1]);
    expect(at({ inkPrices })[0]).toBeLessThan(at({})[0] ?? 0);
    expect(at({ labourPerHour: 360 })[1]).toBeGreaterThan(at({})[1] ?? 0);
  });
});

describe('the quantity at which printers change places', () => {
  it('is the first at which the other one is cheaper', () => {
    expect(changesOfCheapest([curve('Slow', [5, 6, 7, 8]), curve('Dear', [1, 5, 7, 9])])).toEqual([
      { quantity: 4, cheaperBefore: 'Dear', cheaperFrom: 'Slow' },
    ]);
    expect(changesOfCheapest([curve('Slow', [5, 6, 7, 8], 100), curve('Dear', [1, 5, 8, 9], 100)])).toEqual([
      { quantity: 102, cheaperBefore: 'Dear', cheaperFrom: 'Slow' },
    ]);
  });

  it('is told as often as steps make them change, and never where one is always as cheap', () => {
    expect(
      changesOfCheapest([curve('A', [1, 3, 3, 5]), curve('B', [2, 2, 4, 4])]).map(({ quantity }) => quantity),
    ).toEqual([2, 3, 4]);
    expect(changesOfCheapest([curve('A', [1, 2, 3]), curve('B', [1, 3, 3])])).toEqual([]);
    expect(changesOfCheapest([curve('A', [1, 1, 1]), curve('B', [1, 1, 1])])).toEqual([]);
  });

  // At 24 an hour a sheet of the tray printer costs 2.4556 ml x 0.50 of ink and 11 s of labour, one of the hand-fed printer
  // 2.4556 ml x 0.10 and 85 + 44.129 s: 0.19473 less. Setting it up takes ten minutes more, 4.00, which 21 sheets make up
  // for; 5 of them are overs and setting up, so the 16th good sheet decides, and it holds pieces 61 to 64.
  const slow = { ...handPrinter, makeReady: { minutes: 15, sheets: 2 } };
  const both = libraryWith({ printers: [trayPrinter, slow] });
  const plan = layOutCandidates(briefOf(supperBrief), both);
  const meetAt = (whatIf: object) => {
    const [tray, hand] = costCurves(plan, both, coverage, { from: 1, to: 1000 }, whatIf);
    if (tray === undefined || hand === undefined) throw new Error('Both printers can print it');
    return changesOfCheapest([tray, hand]);
  };

  it('for cheap ink fed by hand against dear ink from a tray is where the ink saved pays the hours', () => {
    expect(meetAt({ labourPerHour: 24 })).toEqual([
      { quantity: 61, cheaperBefore: 'Tray printer', cheaperFrom: 'Hand printer' },
    ]);
  });

  it('comes later when labour is dearer, sooner when the dear ink is, and not at all when hours outweigh the ink', () => {
    const last = (whatIf: object) => meetAt(whatIf).at(-1)?.quantity ?? Number.POSITIVE_INFINITY;
    expect(last({ labourPerHour: 26 })).toBeGreaterThan(61);
    expect(last({ labourPerHour: 24, inkPrices: { 'Tray printer': 0.6 } })).toBeLessThan(61);
    expect(meetAt({ labourPerHour: 36 })).toEqual([]);
  });
});
