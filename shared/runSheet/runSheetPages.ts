// The run sheet: one or two plain pages that a person has in hand at the printer.
import type { Size } from '../geometry/space.ts';
import { CAUTIONS } from '../job/cautions.ts';
import { oneLine } from '../marks/slug.ts';
import type { PageBlock } from '../pdf/document/block.ts';
import { fillPages, heightOf, PAGE_MARGIN_PT, type Passage, pageRoom } from '../pdf/document/fillPages.ts';
import { plainPaper } from '../pdf/document/plainPaper.ts';
import { type Measures, setHeading, setTick } from '../pdf/document/setWords.ts';
import type { Shape } from '../pdf/document/shape.ts';
import { setDesigns, setFiles } from './listings.ts';
import { countTable, readingTable } from './roomToWrite.ts';
import type { RunSheetInput } from './runSheetInput.ts';
import { setSheetInHand } from './sheetInHand.ts';
import { runSteps } from './steps.ts';
import { BODY, furnitureOf, HEADING, setCautions, setFacts } from './styles.ts';
import { factsOf, setTitle } from './titleAndFacts.ts';

/** A page's size in pt, and what each page shows. */
export interface Pages {
  readonly paper: Size;
  readonly pages: readonly (readonly Shape[])[];
}

/** The drawing of both sides takes what the rest of the first page leaves, but never less than this, in pt. */
const MIN_DRAWING_PT = 250;

/** Sets the run sheet of a job. */
export function setRunSheet(input: RunSheetInput): Pages {
  const { job, day, measures } = input;
  const paper = plainPaper(job.brief.units);
  const width = paper.w - 2 * PAGE_MARGIN_PT;
  const title = oneLine(job.brief.title);
  const furniture = furnitureOf('Run sheet', title, day, width, measures);
  const top: readonly Passage[] = [
    { blocks: [setTitle(input, title, width)], gap: 0, above: 0 },
    { blocks: [setFacts(factsOf(input), width, measures)], gap: 0, above: 8 },
  ];
  const files: Passage = { blocks: setFiles(input, width), gap: 3, above: 10 };
  const designs: Passage = { blocks: setDesigns(input, width), gap: 0, above: 10 };
  const room = pageRoom(paper, furniture) - heightOf([...top, files]);
  const left = room - heightOf([designs]);
  const height = left >= MIN_DRAWING_PT ? left : Math.max(room, MIN_DRAWING_PT);
  const inHand = setSheetInHand(input, width, height);
  const written: readonly Passage[] = [
    { blocks: setToWrite('Counts', [countTable(job, width, measures)], width, measures), gap: 3, above: 9 },
    { blocks: setToWrite('Readings', readingTable(job, width, measures), width, measures), gap: 3, above: 9 },
    { blocks: [setCautions(Object.values(CAUTIONS), width, measures)], gap: 0, above: 9 },
  ];
  const passages = [...top, inHand, files, designs, ...setSteps(input, width), ...written];
  return { paper, pages: fillPages(paper, passages, furniture) };
}

/** Longer names of files, in letters, are told on the first page only. */
const MAX_NAME_LETTERS = 60;

/** What the hands do, with a box to tick before each step. */
function setSteps({ job, sides, measures }: RunSheetInput, width: number): readonly Passage[] {
  const named = sides.every(({ name }) => name.length <= MAX_NAME_LETTERS) ? sides : [];
  return runSteps(job, named).map(({ name, steps }, i) => ({
    above: 9,
    gap: 3.5,
    onNewPage: i === 0,
    blocks: [
      setHeading(name, HEADING, width, measures),
      ...steps.map((step) => setTick(step, BODY, width, measures)),
    ],
  }));
}

function setToWrite(
  heading: string,
  tables: readonly PageBlock[],
  width: number,
  measures: Measures,
): readonly PageBlock[] {
  return [setHeading(heading, HEADING, width, measures), ...tables];
}
