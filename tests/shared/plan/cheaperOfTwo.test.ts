// Two ways to print that differ in one thing: cost against quantity goes by the cheaper one, whichever comes first.
import { expect, it } from 'vitest';
import type { LaidCandidate } from '../../../shared/plan/candidate.ts';
import { costCurves } from '../../../shared/plan/costCurve.ts';
import { layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';
import { card, libraryWith, trayPrinter } from '../../kit/libraries.ts';
import { briefOf, coverage } from '../../kit/plans.ts';

const [tray] = trayPrinter.feeds;
const [sheet] = card.forms;
const ream = (amount: number) => ({ ...sheet, price: { amount, per: 'ream' } });
const fourUpWorkedAndTurned = ({ work, lies, lead }: LaidCandidate) =>
  work.style === 'work-and-turn' && lies === 'either' && lead === 'short';

/** What 120 cards cost at the least in one of two ways, in either order. */
function cheaperOfTwo(
  changes: object,
  like: (one: LaidCandidate) => boolean,
  written: unknown = supperBrief,
): readonly (number | undefined)[] {
  const library = libraryWith(changes);
  const plan = layOutCandidates(briefOf(written), library);
  const two = plan.candidates.filter(like);
  expect(two).toHaveLength(2);
  return [two, two.toReversed()].map((candidates) => {
    const [curve] = costCurves({ ...plan, candidates }, library, coverage, { from: 120, to: 120 });
    return curve?.totals[0];
  });
}

// By hand in workedExample.test.ts: 120 cards cost 59.82, of which 7.00 is paper (35 sheets at 100 a ream), 42.97 ink,
// 3.85 labour (35 x 11 s at 0.01), 3.00 make-ready, 1.60 trimming and 1.40 wear.
it('of two papers the cheaper one', () => {
  const papers = [card, { ...card, name: 'Board', forms: [ream(50)] }];
  // 35 sheets at 50 a ream are 3.50: 59.82 - 3.50
  expect(cheaperOfTwo({ papers }, fourUpWorkedAndTurned)).toEqual([56.32, 56.32]);
});

it('of one sheet at two prices the cheaper one', () => {
  const papers = [{ ...card, forms: [ream(100), ream(40)] }];
  // 35 sheets at 40 a ream are 2.80: 59.82 - 4.20
  expect(cheaperOfTwo({ papers }, fourUpWorkedAndTurned)).toEqual([55.62, 55.62]);
});

it('of two feeds the one that takes less work', () => {
  const quick = { ...tray, name: 'Feeder', hand: { load: 0, align: 1, turn: 1 } };
  const printers = [{ ...trayPrinter, feeds: [tray, quick] }];
  // 35 x (2 passes x 1 s + 1 s) = 105 s in place of 385 s: 1.05 for 3.85
  expect(cheaperOfTwo({ printers }, fourUpWorkedAndTurned)).toEqual([57.02, 57.02]);
});

it('of two lengths off one roll the shorter one', () => {
  const roll = { is: 'roll', width: '11 in', price: { amount: 2, per: 'metre' }, cutTo: ['17 in', '19 in'] };
  // 35 x 0.4318 m at 2 are 30.226 in place of 7.00, and 35 cuts of 10 s off the roll 3.50 more; 19 in would be 33.78:
  // 30.23 + 42.97 + 3.85 + 3.00 + 1.60 + 3.50 + 1.40
  expect(cheaperOfTwo({ papers: [{ ...card, forms: [roll] }] }, fourUpWorkedAndTurned)).toEqual([
    86.55, 86.55,
  ]);
});

it('of one way out of a parent and another that gives more the one that gives more', () => {
  // Two of 8 x 12 in come out of 20 x 20 in with the grain one way, three where one lies across (arithmetic).
  const price = { amount: 3, per: 'sheet' };
  const parent = { is: 'parent', size: '20 x 20 in', grain: 'long', price, cutTo: ['8 x 12 in'] };
  const simplex = supperWith({ work: 'simplex' }, { back: undefined });
  const like = ({ lies, lead }: LaidCandidate) => lies === 'either' && lead === 'short';
  // Two up on 8 x 12 in: 60 good sheets, 3 overs and 2 to set up are 65, out of 22 parents: 66.00. Ink for 65 x 2 fronts of
  // 5.25 x 7.25 in at 12.5 ml/m2, 39.90 ml, 19.95; labour 65 x 5 s 3.25; make-ready 3.00; wear 1.30; six cuts through one
  // pile of 63 sheets, 120 s, 1.20; and four through the pile of parents, 100 s, 1.00: one along all 20 in that parts 12 in
  // from 8, two that free the sheets of the broad part, one that frees the third. Of 33 parents the paper alone is 99.00.
  expect(cheaperOfTwo({ papers: [{ ...card, forms: [parent] }] }, like, simplex)).toEqual([95.7, 95.7]);
});

it('of a printer that turns the sheet itself and the same turned by hand the first', () => {
  const printers = [{ ...trayPrinter, feeds: [{ ...tray, turnsItself: true }] }];
  const like = ({ work, lies, lead }: LaidCandidate) =>
    lies === 'either' &&
    lead === 'short' &&
    (work.style === 'work-and-turn' || (work.style === 'perfecting' && work.turn === 'side-to-side'));
  // In one pass 35 x 5 s are 1.75 in place of 3.85.
  expect(cheaperOfTwo({ printers }, like)).toEqual([57.72, 57.72]);
});

it('of one form and two the one that is set up once', () => {
  const like = ({ work, lies, lead }: LaidCandidate) =>
    lies === 'either' &&
    lead === 'short' &&
    (work.style === 'work-and-turn' || (work.style === 'work-and-back' && work.turn === 'side-to-side'));
  expect(cheaperOfTwo({}, like)).toEqual([59.82, 59.82]);
});
