// The run sheet: one or two plain pages that a person has in hand at the printer.
import { paperError } from '../geometry/register.ts';
import type { Size } from '../geometry/space.ts';
import { hasOneForm, turnOf } from '../geometry/work.ts';
import { CAUTIONS } from '../job/cautions.ts';
import { countJob } from '../job/counts.ts';
import { type Job, sheetOf, trimOf } from '../job/job.ts';
import type { SidePage } from '../job/nameJobFiles.ts';
import { oneLine } from '../marks/slug.ts';
import { type Block, below, beside, indent, space } from '../pdf/document/block.ts';
import { fillPages, heightOf, PAGE_MARGIN, type Passage, pageRoom } from '../pdf/document/fillPages.ts';
import { plainPaper } from '../pdf/document/plainPaper.ts';
import { type Measures, setHeading, setParagraph, setRow, setTick } from '../pdf/document/setWords.ts';
import type { Shape } from '../pdf/document/shape.ts';
import { showSize } from '../units/show.ts';
import { drawPass, type PassDrawing, scaleFor } from './drawPass.ts';
import { drawCode, type JobName } from './jobCode.ts';
import { letterOf, lettersOf } from './letters.ts';
import { drawMovement } from './movement.ts';
import { countTable, readingTable } from './roomToWrite.ts';
import { seenPasses } from './seenPasses.ts';
import { stepsOf } from './steps.ts';
import type { Stock } from './stock.ts';
import {
  BODY,
  type Fact,
  furnitureOf,
  HEADING,
  NOTE,
  STRONG,
  setCautions,
  setFacts,
  TITLE,
} from './styles.ts';

export interface RunSheetInput {
  readonly job: Job;
  /** Which page of which file prints each side. */
  readonly sides: readonly SidePage[];
  /** The day, as it is to be read. */
  readonly day: string;
  readonly name: JobName;
  /** The paper, where it is known. */
  readonly stock?: Stock | undefined;
  readonly measures: Measures;
}

/** A page's size in pt, and what each page shows. */
export interface Pages {
  readonly paper: Size;
  readonly pages: readonly (readonly Shape[])[];
}

/** The size of the code on the page: modules of half a millimetre and more, in pt. */
const CODE = 70;

/** The drawing of both sides takes what the rest of the first page leaves, but never less than this, in pt. */
const LEAST_DRAWING = 250;

/** Sets the run sheet of a job. */
export function setRunSheet(input: RunSheetInput): Pages {
  const { job, day, measures } = input;
  const paper = plainPaper(job.brief.units);
  const width = paper.w - 2 * PAGE_MARGIN;
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
  const dummy: Passage = {
    blocks: setDummy(input, width, left >= LEAST_DRAWING ? left : room),
    gap: DUMMY_GAP,
    above: DUMMY_ABOVE,
  };
  const written: readonly Passage[] = [
    { blocks: setToWrite('Counts', [countTable(job, width, measures)], width, measures), gap: 3, above: 9 },
    { blocks: setToWrite('Readings', readingTable(job, width, measures), width, measures), gap: 3, above: 9 },
    { blocks: [setCautions(Object.values(CAUTIONS), width, measures)], gap: 0, above: 9 },
  ];
  const passages = [...top, dummy, files, designs, ...setSteps(input, width), ...written];
  return { paper, pages: fillPages(paper, passages, furniture) };
}

function setTitle({ job, name, measures }: RunSheetInput, title: string, width: number): Block {
  const room = width - CODE - 12;
  const isShort = measures[TITLE.weight](title) * TITLE.size <= room;
  const file = name.file === undefined ? 'This job has no file yet' : `Job file ${name.file}`;
  const words = below(
    [
      setParagraph(title, isShort ? TITLE : HEADING, room, measures),
      setParagraph(orderInWords(job), BODY, room, measures),
      setParagraph(`${file}. The code beside names the job.`, NOTE, room, measures),
    ],
    4,
  );
  return beside([{ ...words, w: room }, drawCode(name, CODE)], 12);
}

function orderInWords(job: Job): string {
  const { brief } = job;
  const [piece] = brief.pieces;
  if (brief.pieces.length > 1 || piece === undefined) {
    const all = brief.pieces.reduce((sum, p) => sum + p.quantity, 0);
    return `${brief.pieces.length} designs, ${all} pieces ordered`;
  }
  const gives = countJob(job).yields[0]?.fromNeeded ?? 0;
  return `${piece.name}, ${showSize(trimOf(piece), brief.units)}: ${piece.quantity} ordered, the sheets needed give ${gives}`;
}

function factsOf({ job, stock }: RunSheetInput): readonly Fact[] {
  const { brief, arrangement } = job;
  const { needed, overs, sheets } = countJob(job);
  const turn = turnOf(brief.work);
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

const DUMMY_ABOVE = 10;
const DUMMY_GAP = 5;
/** A drawing of one side is no wider than this, in pt. */
const MOST_DRAWING = 300;

/** The dummy: both sides as the hands see them, and the turn between them. */
function setDummy({ job, measures }: RunSheetInput, width: number, height: number): readonly Block[] {
  const { brief } = job;
  const sheet = sheetOf(brief).size;
  const turn = turnOf(brief.work);
  const itself = brief.work.style === 'perfecting';
  const passes = seenPasses(job);
  const heading = setHeading('The sheet in hand', HEADING, width, measures);
  const words = [
    ...(turn === undefined
      ? []
      : [setParagraph(paperError(turn, brief.sheet.hold).words, BODY, width, measures)]),
    setParagraph(legendOf(job, turn !== undefined && !itself), NOTE, width, measures),
  ];
  const between = turn === undefined ? 0 : 112;
  const room = {
    w: Math.min(MOST_DRAWING, (width - between - 12) / passes.length),
    h: height - DUMMY_ABOVE - below([heading, ...words], DUMMY_GAP).h - DUMMY_GAP,
  };
  const scale = scaleFor(sheet, room);
  const [first, second] = passes.map((pass): Block => {
    const drawing: PassDrawing = {
      pass,
      sheet,
      byHand: turn !== undefined && !itself,
      letters: lettersOf(job),
    };
    return drawPass(drawing, scale, measures);
  });
  if (first === undefined) return [heading, ...words];
  if (turn === undefined || second === undefined) {
    return [heading, indent(first, (width - first.w) / 2), ...words];
  }
  const movement = drawMovement(turn, sheet, itself, between, measures);
  const slack = Math.max(0, width - first.w - second.w - movement.w) / 2;
  const lower = below([space(Math.max(0, (first.h - movement.h) / 2)), movement], 0);
  return [heading, beside([first, lower, second], slack), ...words];
}

function legendOf({ brief }: Job, byHand: boolean): string {
  const guide =
    brief.sheet.hold.across === 'centre'
      ? 'open blocks are guides on both sides'
      : 'the black block is the side guide';
  if (turnOf(brief.work) === undefined) {
    return `F is a front, and the triangle points to its head; ${guide}.`;
  }
  const pencil = byHand ? '; three strokes are the pencil line of the pile' : '';
  return `F is a front, B (shaded, dashed) a back, and the triangle points to its head. A number names the same piece on both sides; ${guide}${pencil}. Edges keep the names they have on side 1.`;
}

function setFiles({ sides, measures }: RunSheetInput, width: number): readonly Block[] {
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

/** Several designs in a table; a single one is told beside the title. */
function setDesigns({ job, measures }: RunSheetInput, width: number): readonly Block[] {
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
      return cells([letterOf(i), piece.name, trim, `${piece.quantity}`, `${perSheet}`, `${fromNeeded}`]);
    }),
  ];
}

/** Longer names of files, in letters, are told on the first page only. */
const LONGEST_NAME = 60;

/** What the hands do, with a box to tick before each step. */
function setSteps({ job, sides, measures }: RunSheetInput, width: number): readonly Passage[] {
  const named = sides.every(({ name }) => name.length <= LONGEST_NAME) ? sides : [];
  return stepsOf(job, named).map(({ name, steps }, i) => ({
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
  tables: readonly Block[],
  width: number,
  measures: Measures,
): readonly Block[] {
  return [setHeading(heading, HEADING, width, measures), ...tables];
}
