// What is looked up on a run sheet: the file of each side, and the designs that are printed.

import { letterFor } from '../cutting/letters.ts';
import { countJob } from '../job/counts.ts';
import { trimOf } from '../job/job.ts';
import type { SidePage } from '../job/nameJobFiles.ts';
import { oneLine, shorten } from '../marks/slug.ts';
import { below, type PageBlock, space } from '../pdf/document/block.ts';
import { setHeading, setParagraph, setRow } from '../pdf/document/setWords.ts';
import { showSize } from '../units/show.ts';
import type { RunSheetInput } from './runSheetInput.ts';
import { BODY, HEADING, NOTE, STRONG } from './styles.ts';

/** Which file prints each side; one that prints both is told once. */
export function setFiles({ sides, measures }: RunSheetInput, width: number): readonly PageBlock[] {
  const [first, second] = sides;
  const again = first !== undefined && first.name === second?.name && first.page === second.page;
  const widths = [76, width - 76 - 60, 60];
  const row = (what: string, { name, page }: SidePage) =>
    setRow(
      [
        setParagraph(what, STRONG, 68, measures),
        setParagraph(name, BODY, width - 76 - 60 - 8, measures),
        setParagraph(`page ${page}`, BODY, 52, measures),
      ],
      widths,
    );
  const rows = again ? [row('Both sides', first)] : sides.map((side) => row(`Side ${side.side}`, side));
  const note = again
    ? [setParagraph('Print this file once on each side of the sheet.', NOTE, width, measures)]
    : [];
  return [setHeading('Files', HEADING, width, measures), below(rows, 0), ...note];
}

/** Letters of a name in the table. */
const MAX_NAME_LETTERS = 90;

/** Several designs in a table; a single one is told beside the title. */
export function setDesigns({ job, measures }: RunSheetInput, width: number): readonly PageBlock[] {
  const { pieces, units } = job.brief;
  if (pieces.length < 2) return [];
  const { yields } = countJob(job);
  const figures = [96, 56, 56, 60];
  const widths = [30, width - 30 - figures.reduce((a, b) => a + b, 0), ...figures];
  const cells = (texts: readonly string[], style = BODY) =>
    setRow(
      texts.map((t, i) => setParagraph(t, style, (widths[i] ?? 0) - 8, measures)),
      widths,
    );
  return [
    below([setHeading('What it prints', HEADING, width, measures), space(3)], 0),
    cells(['', 'Piece', 'Trim', 'Ordered', 'A sheet', 'Gives'], { ...NOTE, weight: 'strong' }),
    ...pieces.map((piece, i) => {
      const { perSheet = 0, fromNeeded = 0 } = yields[i] ?? {};
      const trim = showSize(trimOf(piece), units);
      return cells([
        letterFor(i),
        shorten(oneLine(piece.name), MAX_NAME_LETTERS),
        trim,
        `${piece.quantity}`,
        `${perSheet}`,
        `${fromNeeded}`,
      ]);
    }),
  ];
}
