// The dummy as pages of its own: the sheet in small, to be printed on both sides, held in the hand and turned.
import type { Size } from '../geometry/space.ts';
import { type Job, sheetOf } from '../job/job.ts';
import { oneLine } from '../marks/slug.ts';
import { place } from '../pdf/document/block.ts';
import { PAGE_MARGIN_PT } from '../pdf/document/fillPages.ts';
import { plainPaper } from '../pdf/document/plainPaper.ts';
import { type Measures, setCentred } from '../pdf/document/setWords.ts';
import type { Shape } from '../pdf/document/shape.ts';
import { type Duplex, duplexOf } from '../pdf/sheet/describeFile.ts';
import { drawPass, LABELS_ABOVE, scaleFor, sheetIn } from './drawPass.ts';
import { lettersOf } from './letters.ts';
import type { Pages } from './runSheetPages.ts';
import { seenPasses } from './seenPasses.ts';
import { furnitureOf, NOTE } from './styles.ts';
import { turnOfRun } from './turnOfRun.ts';

/** The dummy's pages, and how a printer turns the paper so that the two sides meet as on the sheet. */
export interface DummyPages extends Pages {
  readonly duplex: Duplex;
}

/**
 * Sets the dummy, a page for each side. The drawn sheet lies in the middle of the page on both, so that front and back
 * of every piece meet when the paper is printed on both sides, turned as the sheet is.
 */
export function setDummyPages(job: Job, day: string, measures: Measures): DummyPages {
  const { brief } = job;
  const sheet = sheetOf(brief).size;
  const turn = turnOfRun(job);
  const paper = turnedLike(plainPaper(brief.units), sheet);
  const width = paper.w - 2 * PAGE_MARGIN_PT;
  const furniture = furnitureOf('Dummy', oneLine(brief.title), day, width, measures);
  const head = furniture.head(1, 1).h;
  const duplex = turn === undefined ? 'Simplex' : duplexOf(paper, { style: 'perfecting', turn });
  const edge = duplex === 'DuplexFlipLongEdge' ? 'long' : 'short';
  const words = setCentred(
    turn === undefined
      ? 'The sheet in small.'
      : `The sheet in small. Print it on both sides, flipped on the ${edge} edge, or lay two prints back to back; then turn it ${turn} as the sheet is turned.`,
    NOTE,
    width,
    measures,
  );
  // What is kept free above the sheet is kept free below it too: the sheet stays in the middle.
  const above = PAGE_MARGIN_PT + Math.max(head, words.h) + LABELS_ABOVE;
  const scale = scaleFor(sheet, { w: width, h: paper.h - 2 * above }, 0);
  const at = sheetIn(sheet, scale);
  const left = paper.w / 2 - at.x - at.w / 2;
  const top = paper.h / 2 - at.y - at.h / 2;
  const passes = seenPasses(job);
  const byHand = turn !== undefined && brief.work.style !== 'perfecting';
  const pages = passes.map((pass, i): readonly Shape[] => [
    ...place(furniture.head(i + 1, passes.length), PAGE_MARGIN_PT, paper.h - PAGE_MARGIN_PT),
    ...place(drawPass({ pass, sheet, byHand, letters: lettersOf(job) }, scale, measures), left, top),
    ...place(words, PAGE_MARGIN_PT, PAGE_MARGIN_PT + words.h),
  ]);
  return { paper, pages, duplex };
}

/** The paper laid the way the sheet lies. */
function turnedLike(paper: Size, sheet: Size): Size {
  return sheet.w > sheet.h ? { w: paper.h, h: paper.w } : paper;
}
