// The slug: a few lines that say which job, form and side a sheet is, how many are wanted, and how it is turned.
import { edgeOfTurn } from '../geometry/perfecting.ts';
import type { Size } from '../geometry/space.ts';
import type { Turn } from '../geometry/turn.ts';
import type { Work } from '../geometry/work.ts';
import type { Form } from '../layout/placement.ts';
import { breakLines } from './breakLines.ts';
import { sideWords } from './leadBar.ts';
import { ASCENT, DESCENT, type Measure, type Stamp } from './mark.ts';

/** What the slug tells besides the form itself. */
export interface SlugFacts {
  /** The title of the job. */
  readonly job: string;
  /** Sheets to print, overs included. */
  readonly sheets: number;
  /** The day, as it is to be read. */
  readonly date: string;
}

/** Sizes of type the slug may have, in pt, the best first. */
const SIZES = [7, 6];
const LEADING = 1.25;

/** Lengths to which a title is cut, in characters, when the whole of it finds no room. */
export const SHORTER_TITLES = [96, 64, 40, 24, 12];

/** The title in one line: line ends and control characters become single spaces. */
export function oneLine(title: string): string {
  return title
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .trim();
}

/** The title cut to at most this many characters, the cut shown by an ellipsis. */
export function shorten(title: string, length: number): string {
  const characters = [...title];
  return characters.length <= length
    ? title
    : `${characters
        .slice(0, length - 1)
        .join('')
        .trimEnd()}…`;
}

/** What the hands, or the printer, do with the sheet around this pass. */
export function turnWords(work: Work, form: Form, sheet: Size): string {
  switch (work.style) {
    case 'simplex':
      return 'printed on one side only';
    case 'work-and-turn':
      return 'print, turn side to side (the lead edge stays), print the same form again';
    case 'work-and-tumble':
      return 'print, turn end to end (the tail becomes the lead edge), print the same form again';
    case 'perfecting':
      return `the printer turns the sheet ${plainTurn(work.turn)}, about its ${edgeOfTurn(work.turn, sheet)} edge`;
    case 'work-and-back': {
      const lead = work.turn === 'side-to-side' ? 'the lead edge stays' : 'the tail becomes the lead edge';
      return form.number === 1
        ? `print, then turn ${plainTurn(work.turn)} (${lead})`
        : `print on the sheet turned ${plainTurn(work.turn)} (${lead})`;
    }
  }
}

/** The slug in every shape it may have, the best first: a column, then wider and lower ones, in each size of type. */
export function slugs(
  facts: SlugFacts,
  form: Form,
  forms: number,
  turning: string,
  measure: Measure,
): readonly Stamp[] {
  const which = `form ${form.number} of ${forms} · ${sideWords(form)}`;
  const run = `${which} · ${facts.sheets} ${facts.sheets === 1 ? 'sheet' : 'sheets'} · ${facts.date}`;
  const column = measure(run);
  const named = facts.job === '' ? [] : [facts.job];
  const shapes = [
    [...named, run, turning].flatMap((line) => breakLines(line, column, measure)),
    [...named, run, turning],
    [[...named, run].join(' · '), turning],
    [[...named, run, turning].join(' · ')],
  ];
  return SIZES.flatMap((size) => shapes.map((lines) => setLines(lines, size, measure)));
}

function setLines(lines: readonly string[], size: number, measure: Measure): Stamp {
  const widths = lines.map((l) => measure(l) * size);
  const h = ((lines.length - 1) * LEADING + ASCENT + DESCENT) * size;
  return {
    size: { w: Math.max(...widths), h },
    marks: lines.map((words, i) => ({
      kind: 'words',
      words,
      at: { x: 0, y: h - (ASCENT + i * LEADING) * size },
      size,
      width: widths[i] ?? 0,
      head: 0,
      ink: 'black',
    })),
  };
}

function plainTurn(turn: Turn): string {
  return turn === 'side-to-side' ? 'side to side' : 'end to end';
}
