// The cutting order as pages: what the person at the guillotine has beside the machine, a drawing for each step.

import { drawStep } from '../cutting/drawing.ts';
import type { CutStep, CuttingOrder } from '../cutting/order.ts';
import { sayOrder, sayRegister, sayStep } from '../cutting/words.ts';
import { CAUTIONS } from '../job/cautions.ts';
import type { Job } from '../job/job.ts';
import { oneLine, shorten } from '../marks/slug.ts';
import { below, beside, type PageBlock, place } from '../pdf/document/block.ts';
import { fillPages, PAGE_MARGIN_PT, type Passage } from '../pdf/document/fillPages.ts';
import { plainPaper } from '../pdf/document/plainPaper.ts';
import { type Measures, setParagraph, setTick } from '../pdf/document/setWords.ts';
import { box } from '../pdf/document/shape.ts';
import { showSize } from '../units/show.ts';
import type { Pages } from './runSheetPages.ts';
import { BODY, type Fact, furnitureOf, HEADING, NOTE, setCautions, setFacts, TITLE } from './styles.ts';

/** Steps stand two and two, each with its drawing, in pt. */
const DRAWINGS_ABREAST = 2;
const GAP_PT = 8;
const DRAWING_HEIGHT_PT = 132;

/** Sets the cutting order of a job. */
export function setCuttingPages(job: Job, order: CuttingOrder, day: string, measures: Measures): Pages {
  const { units } = job.brief;
  const paper = plainPaper(units);
  const width = paper.w - 2 * PAGE_MARGIN_PT;
  const title = oneLine(job.brief.title);
  const cautions = [CAUTIONS.trim, CAUTIONS.lift];
  const told = order.notices.filter((notice) => !cautions.includes(notice));
  const cell = (width - GAP_PT * (DRAWINGS_ABREAST - 1)) / DRAWINGS_ABREAST;
  const rows = inRows(order.steps).map((steps) => setSteps(job, order, steps, cell, measures));
  const passages: readonly Passage[] = [
    {
      blocks: [
        setParagraph(shorten(title, MAX_TITLE_LETTERS), titleStyle(title, width, measures), width, measures),
      ],
      gap: 0,
      above: 0,
    },
    { blocks: [setFacts(factsOf(order, job), width, measures)], gap: 0, above: 6 },
    {
      blocks: [
        ...sayOrder(order, units).map((said) => setParagraph(said, BODY, width, measures)),
        ...told.map((notice) => setParagraph(notice, BODY, width, measures)),
        setParagraph(LEGEND, NOTE, width, measures),
      ],
      gap: 4,
      above: 8,
    },
    { blocks: [setCautions(cautions, width, measures)], gap: 0, above: 8 },
    ...rows.map((row): Passage => ({ blocks: [row], gap: 0, above: GAP_PT })),
  ];
  return {
    paper,
    pages: fillPages(paper, passages, furnitureOf('Cutting order', title, day, width, measures)),
  };
}

/** Letters of a title; it is known by its beginning. */
const MAX_TITLE_LETTERS = 150;

const LEGEND =
  'Each drawing is the table from above; you stand below it. The black bar is the back gauge, the grey one the side guide, the dashed line the knife. Waste is hatched. Numbers are the positions of the dummy; edges keep the names they have on side 1.';

function titleStyle(title: string, width: number, measures: Measures) {
  return measures[TITLE.weight](title) * TITLE.size <= width ? TITLE : HEADING;
}

function factsOf(order: CuttingOrder, job: Job): readonly Fact[] {
  const { cuts, strokes, turns, settings, lifts, knockUp, cutter } = order;
  const [along, across] = knockUp;
  const most = lifts?.sheets[0];
  return [
    {
      label: 'Jog to',
      figure: `${along} + ${across}`,
      note: 'the edges that held the sheet in the printer',
    },
    { label: 'Sheet', figure: showSize(order.sheet, job.brief.units), note: 'across the feed × along it' },
    {
      label: 'Cuts',
      figure: `${cuts}`,
      note: `${settings} settings, ${turns} turns${strokes < cuts ? `; ${strokes} strokes side by side` : ''}`,
    },
    lifts === undefined || most === undefined
      ? {
          label: 'Lifts',
          figure: 'by the gauge',
          note: `for how many sheets ${cutter.name} takes, see the manual`,
        }
      : { label: 'Lifts', figure: `${lifts.sheets.length}`, note: `of ${most} sheets at the most` },
  ];
}

/** The steps in rows of two. */
function inRows(steps: readonly CutStep[]): readonly (readonly CutStep[])[] {
  return steps.flatMap((_step, i) =>
    i % DRAWINGS_ABREAST === 0 ? [steps.slice(i, i + DRAWINGS_ABREAST)] : [],
  );
}

/** Steps side by side in frames of one height. */
function setSteps(
  job: Job,
  order: CuttingOrder,
  steps: readonly CutStep[],
  width: number,
  measures: Measures,
): PageBlock {
  const pad = 5;
  const set = steps.map((step) => setStep(job, order, step, width - 2 * pad, measures));
  const h = Math.max(...set.map((block) => block.h)) + 2 * pad;
  return beside(
    set.map((block): PageBlock => {
      const frame = box({ x: 0, y: -h, w: width, h }, { stroke: { tone: 'soft', width: 0.8 } });
      return { w: width, h, shapes: [frame, ...place(block, pad, -pad)] };
    }),
    GAP_PT,
  );
}

/** A step: its number with a box to tick, its drawing, what to do, and how true the cut is. */
function setStep(
  { brief }: Job,
  order: CuttingOrder,
  step: CutStep,
  width: number,
  measures: Measures,
): PageBlock {
  return below(
    [
      setTick(`Step ${step.number}`, HEADING, width, measures),
      drawStep(order, step, { w: width, h: DRAWING_HEIGHT_PT }, brief.units, measures),
      setParagraph(sayStep(order, step, brief.units), BODY, width, measures),
      setParagraph(sayRegister(step.register), NOTE, width, measures),
    ],
    3,
  );
}
