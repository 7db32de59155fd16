// What a sheet and a form cost in a gang run.
import { expect, it } from 'vitest';
import { gangCostsOf } from '../../../shared/plan/gangCosts.ts';

it('a form costs its make-ready and the sheets spoiled with it, a sheet its share of the rest', () => {
  // By hand: 60 - 10 over 50 sheets is 1.00 a sheet; the form takes its 10 and 4 spoiled sheets.
  const cost = { paper: 20, ink: 15, labour: 10, makeReady: 10, trimming: 4, wear: 1, total: 60 };
  const count = {
    needed: 43,
    overs: 3,
    makeReady: 4,
    sheets: 50,
    yields: [],
    pieces: 172,
    bought: 50,
    oversBy: { percent: 5, least: 3 },
  };
  expect(gangCostsOf({ cost, count })).toEqual({ sheetCost: 1, formCost: 14 });
});
