// The Plan stage: two printers side by side, the quantity where they change places, and the bench laid out for the choice.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import type { Library } from '../../shared/library/library.ts';
import { readLibrary } from '../../shared/library/readLibrary.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import { openBench } from './kit/benchPage.ts';
import { expectAccessible } from './kit/expectAccessible.ts';
import { expect, type Studio, test } from './kit/studio.ts';

const feed = {
  least: '5 x 7 in',
  most: '13 x 19 in',
  unprintable: { lead: 0.2, tail: 0.3, left: 0.125, right: 0.125 },
  hold: { across: 'left', along: 'lead' },
  turnsItself: false,
};
const model = { source: 'rule-of-thumb', base: 0.4, perCoverage: 8, spread: 0.5 };
const usual = [{ name: 'Usual', secondsBase: 8, secondsPerSquareMetre: 200 }];

/** One printer is cheap in ink, takes long to set up and is fed by hand; the other takes what it gets, and much for its ink. */
const TWO_PRINTERS = {
  schema: 1,
  units: 'in',
  currency: '$',
  rates: {
    labourPerHour: 30,
    overs: [{ from: 0, percent: 5, least: 3 }],
    cutting: { secondsPerCut: 12, secondsPerPile: 90, tallestPile: '2 in' },
  },
  printers: [
    {
      name: 'Patient one',
      feeds: [{ name: 'By hand', ...feed, attended: true, hand: { load: 8, align: 8, turn: 3 } }],
      qualities: usual,
      makeReady: { minutes: 40, sheets: 2 },
      ink: { pricePerMl: 0.05, model },
      wearPerSide: 0.02,
    },
    {
      name: 'Thirsty one',
      feeds: [{ name: 'Tray', ...feed, attended: false, hand: { load: 0.3, align: 0, turn: 0.3 } }],
      qualities: usual,
      makeReady: { minutes: 4, sheets: 1 },
      ink: { pricePerMl: 1.6, model },
      wearPerSide: 0.01,
    },
  ],
  papers: [
    {
      name: 'Plain card',
      weight: '300 gsm',
      caliper: '300 um',
      coated: 'none',
      forms: [{ is: 'sheet', size: '11 x 17 in', grain: 'long', price: { amount: 100, per: 'ream' } }],
    },
  ],
};

async function openPlan(studio: Studio) {
  await studio.putSupper();
  const kept = studio.at('.turnlay', 'library.json');
  mkdirSync(dirname(kept), { recursive: true });
  writeFileSync(kept, JSON.stringify({ library: TWO_PRINTERS }));
  await openBench(studio, SUPPER_BRIEF);
  await studio.page.keyboard.press('Control+2');
  return studio.page.getByRole('region', { name: 'Plan', exact: true });
}

/** From which quantity on the patient printer stays the cheaper one, every quantity priced by itself. */
function breakEven(library: Library, coverage: (piece: string, face: string) => number): number {
  const brief = readBrief(SUPPER_BRIEF);
  if (!brief.ok) throw new Error(brief.fault.message);
  const plan = layOutCandidates(brief.value, library);
  const dearer = Array.from({ length: 600 }, (_n, i) => i + 1).filter((pieces) => {
    const costed = costCandidates(plan, library, coverage, { pieces });
    const best = (name: string) =>
      Math.min(...costed.filter((c) => c.printer.name === name).map((c) => c.cost.total));
    return best('Patient one') >= best('Thirsty one');
  });
  return Math.max(...dearer) + 1;
}

test('the quantity from which the cheap ink pays is read off the chart as it is worked out', async ({
  studio,
}) => {
  const plan = await openPlan(studio);
  const chart = plan.getByRole('img', { name: /^Cost of one piece against the quantity/ });
  await expect(chart).toHaveAccessibleName(/from \d+ pieces on Patient one is cheaper than Thirsty one/);
  const library = readLibrary(TWO_PRINTERS);
  if (!library.ok) throw new Error(library.fault.message);
  const from = breakEven(library.value, () => 1);
  await expect(plan).toContainText(`From ${from} pieces on, Patient one is cheaper than Thirsty one.`);
  await expectAccessible(studio.page);
});

test('choosing lays the bench out, and can be taken back', async ({ studio }) => {
  const plan = await openPlan(studio);
  const { page } = studio;
  await plan.getByRole('button', { name: /^Show all/ }).click();
  await plan
    .getByRole('radio', { name: /^Patient one.*Work-and-tumble/ })
    .first()
    .check();
  const chosen = plan.getByRole('region', { name: 'Chosen plan' });
  await expect(chosen).toContainText('Work-and-tumble, turned end to end');
  await chosen.getByRole('button', { name: 'Use this plan' }).click();
  await expect(chosen).toContainText('The sheet on the bench is laid out for this.');
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveAccessibleName('Undo Plan for Patient one');
  await page.keyboard.press('Control+3');
  await expect(page.getByRole('listbox', { name: 'Positions on the sheet' }).getByRole('option')).toHaveCount(
    4,
  );
  await expect(page.getByText('No faults found')).toBeVisible();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+2');
  await expect(chosen.getByRole('button', { name: 'Use this plan' })).toBeVisible();
});

test('a slider tells at once what it would cost, and changes nothing in the job', async ({ studio }) => {
  const plan = await openPlan(studio);
  const chosen = plan.getByRole('region', { name: 'Chosen plan' });
  const inAll = chosen.getByRole('row', { name: /^Total/ });
  const before = (await inAll.getByRole('cell').textContent()) ?? '';
  const slider = plan.getByRole('slider', { name: 'Price of ink' });
  await slider.focus();
  await studio.page.keyboard.press('End');
  await expect(plan).toContainText('4.00 times as dear');
  await expect(inAll).not.toContainText(before);
  await plan.getByRole('button', { name: 'Reset' }).click();
  await expect(plan).toContainText('as each printer has it');
  await expect(inAll).toContainText(before);
  await expect(studio.page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});
