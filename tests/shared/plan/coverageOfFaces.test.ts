// What the plan takes for the ink of a face.
import { expect, it } from 'vitest';
import { costCandidates } from '../../../shared/plan/costCandidates.ts';
import { coverageFrom } from '../../../shared/plan/coverageOfFaces.ts';
import { layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { supperBrief } from '../../kit/briefs.ts';
import { libraryWith } from '../../kit/libraries.ts';
import { briefOf, only } from '../../kit/plans.ts';

it('a face takes what was measured for it, not what was measured for the other face or another design', () => {
  const coverage = coverageFrom([
    { piece: 'Menu', face: 'front', total: 2.25 },
    { piece: 'Menu', face: 'back', total: 0 },
    { piece: 'Tag', face: 'front', total: 0.5 },
  ]);
  expect(coverage('Menu', 'front')).toBe(2.25);
  expect(coverage('Menu', 'back')).toBe(0);
  expect(coverage('Tag', 'front')).toBe(0.5);
});

it('a face that was not measured yet is taken as covered once', () => {
  const coverage = coverageFrom([{ piece: 'Menu', face: 'front', total: 3 }]);
  expect(coverage('Menu', 'back')).toBe(1);
  expect(coverage('Tag', 'front')).toBe(1);
});

it('35 sheets of eight faces take the ink that their fronts and backs were measured for', () => {
  const library = libraryWith();
  const measured = coverageFrom([
    { piece: 'Supper', face: 'front', total: 2 },
    { piece: 'Supper', face: 'back', total: 0.25 },
  ]);
  const plan = layOutCandidates(briefOf(supperBrief), library);
  const { ink } = only(
    costCandidates(plan, library, measured),
    ({ work, lies }) => work.style === 'work-and-turn' && lies === 'either',
  );
  // Four fronts and four backs of 5.25 x 7.25 in on each sheet; a face takes 0.5 + 8 x its coverage ml/m2: 16.5 and 2.5.
  // 5.25 x 7.25 x 0.00064516 = 0.0245564 m2; 35 x 4 x 0.0245564 x (16.5 + 2.5) = 65.32 ml.
  expect(ink.ml).toBeCloseTo(35 * 4 * 5.25 * 7.25 * 0.00064516 * (16.5 + 2.5), 6);
  expect(ink.ml).toBeCloseTo(65.32, 2);
});
