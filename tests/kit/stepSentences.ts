// What a printer understands: every sentence of the steps, what the hands do when they read it, and what it claims of the
// paper, which is looked at there.
import { sheetOf, trimOf } from '../../shared/job/job.ts';
import { type Edge, edgeAt } from './paperInPasses.ts';
import {
  does,
  flip,
  guideEdge,
  type Hands,
  lookAtBacks,
  marginAt,
  must,
  printOne,
  type Shop,
  sameOnTheRule,
  takeFile,
  turnOver,
} from './printerHands.ts';

/** What is done is called by a name; several sentences may say the same thing of different jobs. */
type Sentence = readonly [
  name: string,
  sentence: RegExp,
  does: (hands: Hands, shop: Shop, ...said: readonly string[]) => void,
];

/** One is told in a word, more in figures; none or 1 in figures is not how people speak. */
function countOthers(said: string): number {
  must(said === 'one' || Number(said) > 1, `there are ${said} others`);
  return said === 'one' ? 1 : Number(said);
}

/** All that a printer has to understand. */
export const SENTENCES: readonly Sentence[] = [
  [
    'sides alike',
    /^Both sides of this paper must be alike\. Lay two sheets side by side, one of them turned over; look and feel\./,
    (hands) => {
      hands.alike = 'must be';
    },
  ],
  [
    'sides alike',
    /^Look at both sides of the paper: they are said to be alike\. If they are not, decide which of them is side 1\./,
    (hands) => {
      hands.alike = 'are said to be';
    },
  ],
  [
    'sides alike',
    /^The two sides of this paper differ: decide which of them is side 1, and load all sheets that way\./,
    (hands) => {
      hands.alike = 'are not';
    },
  ],
  [
    'load',
    /^Load (1 sheet|\d+ sheets) of ([^,]+), (square|square and all of one size), (?:with the guides close on (both sides)|against the (left|right) side guide)\./,
    (hands, { job }, sheets, size, cut, both, side) => {
      const { w, h } = sheetOf(job.brief).size;
      must(sameOnTheRule(size!, [w, h]), `the sheet measures ${size}`);
      hands.loaded = Number.parseInt(sheets!, 10);
      must((sheets === '1 sheet') === (hands.loaded === 1), `${hands.loaded} are ${sheets}`);
      must((cut === 'square') === (hands.loaded === 1), `${sheets} are ${cut}`);
      hands.guide = both === undefined ? (side as 'left' | 'right') : 'centre';
      does(hands, 'lift');
    },
  ],
  [
    'which side',
    /^Which side of the paper is printed first in the tray, the manual of the printer tells\./,
    (hands) => must(hands.loaded > 0, 'sheets lie in the tray'),
  ],
  [
    'pencil',
    /^Draw a pencil line down the (left|right) side of the (sheet|pile), close to the lead edge\. Whoever turns the \2 sees by it how it lay\./,
    (hands, _shop, side, what) => {
      must((what === 'sheet') === (hands.loaded === 1), `${hands.loaded} sheets make a ${what}`);
      hands.pencil = side as 'left' | 'right';
    },
  ],
  [
    'settings',
    /^At the printer: 100 % size, no fitting to the page, no automatic rotation, no automatic centring, borderless expansion off, two-sided printing (?:off|on, flipped on the (long|short) edge)\./,
    (hands, _shop, edge) => {
      hands.flips = edge as 'long' | 'short' | undefined;
    },
  ],
  [
    'print both',
    /^Print one sheet(?: from (.+?))?: page 1 is side 1, page 2 is side 2\. The printer turns it itself\./,
    (hands, shop, name) => {
      must(hands.flips !== undefined, 'the printer turns sheets itself');
      for (const side of [1, 2] as const) {
        takeFile(shop, side, name);
        const found = shop.sides.find((s) => s.side === side);
        must(found === undefined || found.page === side, `page ${side} is side ${side}`);
        printOne(hands, shop, side);
        if (side === 1) flip(hands, shop);
      }
    },
  ],
  [
    'print',
    /^Print one sheet(?: from (.+))?\.$/,
    (hands, shop, name) => {
      must(hands.flips === undefined, 'the printer prints one side only');
      takeFile(shop, 1, name);
      printOne(hands, shop, 1);
    },
  ],
  [
    'pass 1',
    /^Pass 1: print side 1 on one sheet(?: from (.+?))?\. (?=Let the ink dry\.)/,
    (hands, shop, name) => {
      must(hands.flips === undefined, 'the printer prints one side only');
      takeFile(shop, 1, name);
      printOne(hands, shop, 1);
    },
  ],
  [
    'dry',
    /^Let the ink dry\./,
    (hands) => {
      hands.wet = false;
    },
  ],
  ['turn', /^Turn it over like the page of a book\./, (hands) => turnOver(hands, 'side-to-side')],
  ['turn', /^Turn it over end to end, lead edge to tail\./, (hands) => turnOver(hands, 'end-to-end')],
  [
    'leading',
    /^The (same edge|tail) leads (again|now)\./,
    (hands, { job }, which, when) => {
      must((which === 'tail') === (when === 'now'), 'what leads again led before');
      const leads = edgeAt(hands.turned, sheetOf(job.brief).size, 'lead');
      must(leads === (which === 'tail' ? 'tail' : 'lead'), `the ${which} leads ${when}`);
    },
  ],
  [
    'guide',
    /^The side guide met its (left|right) edge; now it meets the (left|right) one\./,
    (hands, { job }, before, after) => {
      const { size } = sheetOf(job.brief);
      must(edgeAt(undefined, size, guideEdge(hands)) === before, `the guide met the ${before} edge`);
      must(edgeAt(hands.turned, size, guideEdge(hands)) === after, `the guide meets the ${after} edge`);
    },
  ],
  [
    'guide',
    /^The side guide meets the (left|right) edge again\./,
    (hands, { job }, edge) => {
      const { size } = sheetOf(job.brief);
      for (const turn of [undefined, hands.turned]) {
        must(edgeAt(turn, size, guideEdge(hands)) === edge, `the guide meets the ${edge} edge`);
      }
    },
  ],
  [
    'guide',
    /^The printer centres it as before\./,
    (hands) => must(hands.guide === 'centre', 'the sheet is held in the middle'),
  ],
  [
    'pass 2',
    /^Pass 2: print the same file once more on the other side of that sheet\./,
    (hands, shop) => {
      const pages = shop.sides.map(({ name, page }) => `${name} ${page}`);
      must(new Set(pages).size <= 1, 'one page prints both sides');
      printOne(hands, shop, 1);
    },
  ],
  [
    'pass 2',
    /^Pass 2: print side 2 on the same sheet(?: from (.+))?\.$/,
    (hands, shop, name) => {
      takeFile(shop, 2, name);
      printOne(hands, shop, 2);
    },
  ],
  [
    'measure',
    /^Measure the printed ruler, and (.+) from crop mark to crop mark: (.+ × .+)\.$/,
    (_hands, { job }, name, size) => {
      must(job.brief.marks, 'marks are printed');
      const { w, h } = trimOf(job.brief.pieces.find((piece) => piece.name === name)!);
      must(sameOnTheRule(size!, [w, h]), `${name} measures ${size}`);
    },
  ],
  [
    'light',
    /^Hold it to the light: every back behind its own front, (crop marks on each other, )?the (left|lead) and (right|tail) margins as laid \((\w+) ([^,]+), (\w+) ([^,]+) on side 1\)\.$/,
    (hands, shop, marks, ...said) => {
      const [one, other, first, atFirst, second, atSecond] = said as [Edge, Edge, Edge, string, Edge, string];
      must(shop.job.brief.marks === (marks !== undefined), 'marks are printed');
      // The margins that the turn lays upon each other.
      must(edgeAt(hands.turned, sheetOf(shop.job.brief).size, one) === other, `${one} comes upon ${other}`);
      must(first === one && second === other, 'these margins are told');
      must(sameOnTheRule(atFirst, [marginAt(shop, one)]), `the ${one} margin is ${atFirst}`);
      must(sameOnTheRule(atSecond, [marginAt(shop, other)]), `the ${other} margin is ${atSecond}`);
    },
  ],
  [
    'cut one',
    /^Cut one piece out of it (through its crop marks|at its trim): no white on any edge, no type near it\./,
    (hands, { job }, where) => {
      must((where === 'at its trim') === !job.brief.marks, 'marks are printed');
      does(hands, 'trim');
    },
  ],
  [
    'back',
    /^Turn (.+) over like a page: the back stands upright\./,
    (hands, shop, names) => lookAtBacks(hands, shop, names!, 'like a page'),
  ],
  [
    'back',
    /^Turn (.+) up like a wall calendar: the back stands upright\./,
    (hands, shop, names) => lookAtBacks(hands, shop, names!, 'like a calendar'),
  ],
  [
    'others',
    /^When that sheet is right, all is printed: it is the only one of this run\./,
    (hands) => {
      must(hands.loaded === 1, 'one sheet was loaded');
      hands.others = 0;
    },
  ],
  [
    'others',
    /^When that sheet is right, print side 1 of the other (one|\d+), let the ink dry, turn (it|the whole pile) in the same way, and print side 2\./,
    (hands, _shop, others, turned) => {
      must(hands.flips === undefined && hands.turned !== undefined, 'hands turned the first sheet');
      must((others === 'one') === (turned === 'it'), `${others} more is ${turned}`);
      hands.others = countOthers(others!);
      does(hands, 'feed');
      does(hands, 'lift');
    },
  ],
  [
    'others',
    /^When that sheet is right, print the other (one|\d+)\./,
    (hands, _shop, others) => {
      must(hands.flips !== undefined || hands.turned === undefined, 'one pass prints a sheet');
      hands.others = countOthers(others!);
      does(hands, 'feed');
    },
  ],
  [
    'overs',
    /^There are no overs: for each sheet that is spoiled, load another\./,
    (hands) => {
      hands.overs = 0;
    },
  ],
  [
    'overs',
    /^Count the spoiled sheets of each pass: (\d+) of the (\d+) (is an over|are overs)\./,
    (hands, _shop, overs, sheets, are) => {
      must(Number(sheets) === hands.loaded, `${sheets} sheets were loaded`);
      hands.overs = Number(overs);
      must((are === 'is an over') === (hands.overs === 1), `${overs} ${are}`);
      must(hands.overs > 0, 'there are overs to count');
    },
  ],
  ['trim', /^Trim when the ink is dry\./, (hands) => does(hands, 'trim')],
];
