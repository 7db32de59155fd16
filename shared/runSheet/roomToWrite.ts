// Room on the run sheet for what is counted and measured, and for the initials of who did it.
import { registerEdges } from '../geometry/register.ts';
import type { Job } from '../job/job.ts';
import { below, type PageBlock } from '../pdf/document/block.ts';
import { type Measures, setParagraph, setRow } from '../pdf/document/setWords.ts';
import { NOTE, STRONG } from './styles.ts';
import { turnOfRun } from './turnOfRun.ts';

/** High enough to write in by hand, in pt. */
const WRITING_HEIGHT_PT = 20;

/** The counts of each pass. */
export function countTable(job: Job, width: number, measures: Measures): PageBlock {
  const twice = turnOfRun(job) !== undefined && job.brief.work.style !== 'perfecting';
  const rows = [...(twice ? ['Pass 1', 'Pass 2'] : ['Printed']), 'Trimmed'];
  return setTable(
    ['', 'Taken', 'Good', 'Spoiled', 'Why spoiled', 'Initials'],
    [76, 60, 60, 60],
    66,
    rows,
    width,
    measures,
  );
}

/** The readings of the register; only a sheet that is turned has them. */
export function readingTable(job: Job, width: number, measures: Measures): readonly PageBlock[] {
  const turn = turnOfRun(job);
  const rows = ['Proof sheet', 'Middle', 'Last'];
  if (turn === undefined) {
    return [
      setTable(
        ['Sheet', 'Ruler reads', 'Lead margin', 'Left margin', 'Remarks', 'Initials'],
        [76, 70, 70, 70],
        66,
        rows,
        width,
        measures,
      ),
    ];
  }
  const [one, other] = registerEdges(turn);
  return [
    setParagraph(
      `How far side 2 lies from side 1 at a crop mark, in ${job.brief.units}: to the right and towards the lead edge is more (+).`,
      NOTE,
      width,
      measures,
    ),
    setTable(
      ['Sheet', 'Across', 'Along', `Margin ${one}`, `Margin ${other}`, 'Initials'],
      [76, 84, 84, 84],
      66,
      rows,
      width,
      measures,
    ),
  ];
}

/** A table with a heading row and named rows to be filled in by hand; the last but one column takes the rest. */
function setTable(
  heads: readonly string[],
  widths: readonly number[],
  last: number,
  rows: readonly string[],
  width: number,
  measures: Measures,
): PageBlock {
  const rest = width - last - widths.reduce((a, b) => a + b, 0);
  const all = [...widths, rest, last];
  const cells = (words: readonly string[], style = STRONG, least = WRITING_HEIGHT_PT) =>
    setRow(
      all.map((w, i) => setParagraph(words[i] ?? '', style, w - 8, measures)),
      all,
      least,
    );
  return below([cells(heads, { ...NOTE, weight: 'strong' }, 0), ...rows.map((row) => cells([row]))], 0);
}
