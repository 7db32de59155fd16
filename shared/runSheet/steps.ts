// Loading, turning and looking: what the hands do for a job, in order.
import { edgeOfTurn } from '../geometry/perfecting.ts';
import { registerEdges } from '../geometry/register.ts';
import type { Turn } from '../geometry/turn.ts';
import { hasOneForm } from '../geometry/work.ts';
import type { Handling } from '../job/cautions.ts';
import { countJob } from '../job/counts.ts';
import { type Job, sheetOf, trimOf } from '../job/job.ts';
import type { SidePage } from '../job/nameJobFiles.ts';
import { registerMargins } from '../layout/registerMargins.ts';
import { oneLine, shorten } from '../marks/slug.ts';
import { showLength, showSize } from '../units/show.ts';
import { restOfRun } from './restOfRun.ts';
import { type SeenPass, seenFirst, seenTurned } from './seenPasses.ts';
import { turnOfRun } from './turnOfRun.ts';

/** Steps that belong together, and the cautions that go with them. */
export interface StepGroup {
  readonly name: string;
  readonly steps: readonly string[];
  /** Of what the hands do here for the first time; that of the knife wherever there is one. */
  readonly cautions: readonly Handling[];
}

/** Which sides of the sheet a file prints, in words. */
export function printsInWords(sides: readonly SidePage[], name: string): string {
  const printed = sides.filter((s) => s.name === name);
  if (printed.length < 2) return `prints side ${printed[0]?.side ?? 1}`;
  const pages = new Set(printed.map((s) => s.page));
  return pages.size === 1
    ? 'prints both sides from one form: print it once, turn the sheet, print it again'
    : 'prints both sides: page 1 is side 1, page 2 is side 2';
}

/**
 * The steps of this job in groups. `sides`: which page of which file prints each side; empty where it is not known yet.
 *
 * @source common practice, no source
 */
export function runSteps(
  job: Job,
  sides: readonly SidePage[],
): readonly [before: StepGroup, first: StepGroup, rest: StepGroup] {
  const { sheets, overs } = countJob(job);
  const passes = passesOf(job, sides);
  return [
    {
      name: 'Before printing',
      steps: [...paperOf(job), ...loadingOf(job, sheets), `At the printer: ${settingsOf(job).join(', ')}.`],
      cautions: ['lift'],
    },
    {
      name: 'One sheet first',
      steps: [...passes, ...lookingOf(job)],
      cautions: ['feed', 'trim'],
    },
    {
      name: 'The rest',
      steps: [...restOfRun(sheets, overs, passes.length > 1), 'Trim when the ink is dry.'],
      cautions: ['trim'],
    },
  ];
}

function loadingOf(job: Job, sheets: number): readonly string[] {
  const { brief } = job;
  const { across } = brief.sheet.hold;
  const held =
    across === 'centre' ? 'with the guides close on both sides' : `against the ${across} side guide`;
  const [count, cut, pile] =
    sheets === 1
      ? ['1 sheet', 'square', 'sheet']
      : [`${sheets} sheets`, 'square and all of one size', 'pile'];
  const load = `Load ${count} of ${showSize(sheetOf(brief).size, brief.units)}, ${cut}, ${held}. Which side of the paper is printed first in the tray, the manual of the printer tells.`;
  if (turnOfRun(job) === undefined || brief.work.style === 'perfecting') return [load];
  return [
    load,
    `Draw a pencil line down the ${seenFirst(job).pencil.side} side of the ${pile}, close to the lead edge. Whoever turns the ${pile} sees by it how it lay.`,
  ];
}

/** What is set at the printer, one setting each. */
function settingsOf(job: Job): readonly string[] {
  const { brief } = job;
  const twoSided =
    brief.work.style === 'perfecting' && turnOfRun(job) !== undefined
      ? `two-sided printing on, flipped on the ${edgeOfTurn(brief.work.turn, sheetOf(brief).size)} edge`
      : 'two-sided printing off';
  return [
    '100 % size',
    'no fitting to the page',
    'no automatic rotation',
    'no automatic centring',
    'borderless expansion off',
    twoSided,
  ];
}

/** What the two sides of the paper have to be. */
function paperOf(job: Job): readonly string[] {
  const { brief } = job;
  if (turnOfRun(job) === undefined) return [];
  if (hasOneForm(brief.work)) {
    return [
      'Both sides of this paper must be alike. Lay two sheets side by side, one of them turned over; look and feel.',
    ];
  }
  return brief.sheet.sidesAlike
    ? [
        'Look at both sides of the paper: they are said to be alike. If they are not, decide which of them is side 1.',
      ]
    : ['The two sides of this paper differ: decide which of them is side 1, and load all sheets that way.'];
}

/** The passes of a sheet and the turn between them. */
function passesOf(job: Job, sides: readonly SidePage[]): readonly string[] {
  const { work } = job.brief;
  const turn = turnOfRun(job);
  const first = sides.find((s) => s.side === 1);
  const second = sides.find((s) => s.side === 2);
  const of = (side: SidePage | undefined) => (side === undefined ? '' : ` from ${side.name}`);
  if (turn === undefined) return [`Print one sheet${of(first)}.`];
  if (work.style === 'perfecting') {
    return [`Print one sheet${of(first)}: page 1 is side 1, page 2 is side 2. The printer turns it itself.`];
  }
  return [
    `Pass 1: print side 1 on one sheet${of(first)}. Let the ink dry.`,
    turningOf(job, turn),
    hasOneForm(work)
      ? `Pass 2: print the same file once more on the other side of that sheet.`
      : `Pass 2: print side 2 on the same sheet${of(second)}.`,
  ];
}

/** How the hands turn the sheet, and where it is held then. */
export function turningOf(job: Job, turn: Turn): string {
  const [before, after] = [seenFirst(job), seenTurned(job, turn)];
  const how =
    turn === 'side-to-side'
      ? 'Turn it over like the page of a book.'
      : 'Turn it over end to end, lead edge to tail.';
  const leading = after.leads === 'lead' ? 'The same edge leads again.' : 'The tail leads now.';
  return `${how} ${leading} ${guidingOf(before, after)}`;
}

function guidingOf(before: SeenPass, after: SeenPass): string {
  if (after.meets === undefined) return 'The printer centres it as before.';
  return after.meets === before.meets
    ? `The side guide meets the ${after.meets} edge again.`
    : `The side guide met its ${before.meets} edge; now it meets the ${after.meets} one.`;
}

/** What to look at on the sheet that was printed first. */
function lookingOf(job: Job): readonly string[] {
  const { brief, arrangement } = job;
  const turn = turnOfRun(job);
  const [piece] = brief.pieces;
  const measure =
    brief.marks && piece !== undefined
      ? [
          `Measure the printed ruler, and ${sayNames([piece.name])} from crop mark to crop mark: ${showSize(trimOf(piece), brief.units)}.`,
        ]
      : [];
  const trim = `Cut one piece out of it ${brief.marks ? 'through its crop marks' : 'at its trim'}: no white on any edge, no type near it.`;
  if (turn === undefined) return [...measure, trim];
  const [one, other] = registerEdges(turn);
  const margins = registerMargins(
    arrangement.map((p) => p.trim),
    turn,
    sheetOf(brief).size,
  )?.margins.map((m) => showLength(m, brief.units));
  const wanted = margins === undefined ? '' : ` (${one} ${margins[0]}, ${other} ${margins[1]} on side 1)`;
  return [
    ...measure,
    `Hold it to the light: every back behind its own front, ${brief.marks ? 'crop marks on each other, ' : ''}the ${one} and ${other} margins as laid${wanted}.`,
    trim,
    ...readerTurnsOf(job),
  ];
}

/** How a piece in hand is turned to see whether its back stands upright. */
function readerTurnsOf({ brief }: Job): readonly string[] {
  const called = (turned: 'head-to-head' | 'head-to-toe') =>
    brief.pieces.filter((p) => p.back !== undefined && p.turned === turned).map((p) => p.name);
  const [pages, calendars] = [called('head-to-head'), called('head-to-toe')];
  const say = (names: readonly string[], how: string) =>
    names.length === 0 ? [] : [`Turn ${sayNames(names)} ${how}: the back stands upright.`];
  return [...say(pages, 'over like a page'), ...say(calendars, 'up like a wall calendar')];
}

/** So many names are said; the rest are counted. */
const MAX_NAMED = 4;
/** Letters of a name. */
const MAX_NAME_LETTERS = 70;

function sayNames(names: readonly string[]): string {
  const said = names.slice(0, MAX_NAMED).map((name) => shorten(oneLine(name), MAX_NAME_LETTERS));
  const more = names.length - said.length;
  return more > 0 ? `${said.join(', ')} and ${more} more` : said.join(', ');
}
