// The top of a run sheet: which job it is, with its code, and the few facts that are seen from afar.
import { hasOneForm } from '../geometry/work.ts';
import { countJob } from '../job/counts.ts';
import { type Job, sheetOf, trimOf } from '../job/job.ts';
import { oneLine, shorten } from '../marks/slug.ts';
import { below, beside, type PageBlock } from '../pdf/document/block.ts';
import { setParagraph } from '../pdf/document/setWords.ts';
import { showSize } from '../units/show.ts';
import { drawCode } from './jobCode.ts';
import type { RunSheetInput } from './runSheetInput.ts';
import { BODY, type Fact, HEADING, NOTE, TITLE } from './styles.ts';
import { turnOfRun } from './turnOfRun.ts';

/** The size of the code on the page: modules of half a millimetre and more, in pt. */
const CODE_SIDE_PT = 70;

/** Letters of a title and of other names that a run sheet tells; it is known by its beginning. */
const MAX_TITLE_LETTERS = 150;
const MAX_NAME_LETTERS = 70;

/** The title, what was ordered, and the code. */
export function setTitle({ job, name, measures }: RunSheetInput, title: string, width: number): PageBlock {
  const room = width - CODE_SIDE_PT - 12;
  const isShort = measures[TITLE.weight](title) * TITLE.size <= room;
  const file =
    name.file === undefined ? 'This job has no file yet' : `Job file ${shorten(name.file, MAX_NAME_LETTERS)}`;
  const words = below(
    [
      setParagraph(shorten(title, MAX_TITLE_LETTERS), isShort ? TITLE : HEADING, room, measures),
      setParagraph(orderInWords(job), BODY, room, measures),
      setParagraph(`${file}. The code beside names the job.`, NOTE, room, measures),
    ],
    4,
  );
  return beside([{ ...words, w: room }, drawCode(name, CODE_SIDE_PT)], 12);
}

function orderInWords(job: Job): string {
  const { brief } = job;
  const [piece] = brief.pieces;
  if (brief.pieces.length > 1 || piece === undefined) {
    const all = brief.pieces.reduce((sum, p) => sum + p.quantity, 0);
    return `${brief.pieces.length} designs, ${all} pieces ordered`;
  }
  const gives = countJob(job).yields[0]?.fromNeeded ?? 0;
  return `${shorten(oneLine(piece.name), MAX_NAME_LETTERS)}, ${showSize(trimOf(piece), brief.units)}: ${piece.quantity} ordered, the sheets needed give ${gives}`;
}

/** How much is loaded, on what, and how it is worked. */
export function factsOf({ job, stock }: RunSheetInput): readonly Fact[] {
  const { brief, arrangement } = job;
  const { needed, overs, sheets } = countJob(job);
  const turn = turnOfRun(job);
  const passes = turn === undefined || brief.work.style === 'perfecting' ? 'one pass' : 'two passes';
  const forms = hasOneForm(brief.work) ? 'one form for both sides' : 'a form for each side';
  return [
    { label: 'Load', figure: `${sheets} sheets`, note: `${needed} needed and ${overs} overs` },
    {
      label: 'Sheet',
      figure: showSize(sheetOf(brief).size, brief.units),
      note:
        stock?.name === undefined ? 'across the feed × along it' : `${stock.name}, across × along the feed`,
    },
    {
      label: 'Way of working',
      figure: brief.work.style,
      note: turn === undefined ? 'printed on one side' : `turned ${turn}, ${passes}, ${forms}`,
    },
    {
      label: 'On a sheet',
      figure: `${arrangement.length} up`,
      note: `proof sheet first, then the other ${Math.max(0, sheets - 1)}`,
    },
  ];
}
