// Every way in which a job could be printed with a library: each printer, feed, paper, sheet, lead, lie and way of working.
import { hasOneForm, type Work } from '../geometry/work.ts';
import type { Brief } from '../job/brief.ts';
import { unfitFor, WORKS } from '../job/compareWorks.ts';
import { designsOf, trimOf } from '../job/job.ts';
import { withWork } from '../job/oneForm.ts';
import type { Lies } from '../layout/lies.ts';
import { cellOf } from '../layout/room.ts';
import type { Feed, Library, Paper, Printer, StockForm } from '../library/library.ts';
import { points, type Unit } from '../units/length.ts';
import type { LaidCandidate, Refused } from './candidate.ts';
import { CutCounter } from './cuts.ts';
import { fedSheets } from './fedSheet.ts';
import type { CutFor, FedSheet } from './feeding.ts';
import { type Layout, Layouts, sheetKey } from './layouts.ts';
import { sizeInPoints } from './measures.ts';
import { doesNotTurn, noSheetGoesIn, tooThick, unlikeSides } from './refusals.ts';
import { Refusals } from './refusedTogether.ts';

/** The layouts of a job's candidates. What they cost is worked out from these, as often as prices or quantities change. */
export interface LaidPlan {
  readonly brief: Brief;
  readonly candidates: readonly LaidCandidate[];
  readonly refused: readonly Refused[];
}

/** Lays the job out in every way that the library and the job allow, and says of the others why not. */
export function layOutCandidates(brief: Brief, library: Library): LaidPlan {
  const works = worksOf(brief);
  const cuts = new CutCounter();
  const layouts = new Layouts(brief, cuts);
  const refusals = new Refusals();
  const wanted = wantedOf(brief, cuts);
  const candidates = library.printers.flatMap((printer) =>
    printer.feeds.flatMap((feed) => {
      const [here, notHere] = partBy(works, ({ style }) => style !== 'perfecting' || feed.turnsItself);
      if (notHere.length > 0) refusals.add({ printer, feed }, notHere, doesNotTurn(printer, feed));
      return library.papers.flatMap((paper) =>
        candidatesOn({ printer, feed, paper, works: here, wanted, unit: brief.units, layouts, refusals }),
      );
    }),
  );
  return { brief, candidates, refused: refusals.all() };
}

interface Trying {
  readonly printer: Printer;
  readonly feed: Feed;
  readonly paper: Paper;
  readonly works: readonly Work[];
  readonly wanted: CutFor;
  /** The unit that refusals speak in. */
  readonly unit: Unit;
  readonly layouts: Layouts;
  readonly refusals: Refusals;
}

function candidatesOn(trying: Trying): readonly LaidCandidate[] {
  const { feed, paper, refusals, wanted, unit } = trying;
  if (feed.thickest !== undefined && paper.caliper.micrometres > feed.thickest.micrometres) {
    refusals.add(trying, [], tooThick(feed.name, feed.thickest, paper));
    return [];
  }
  const [works, unlike] = partBy(trying.works, (work) => paper.sidesAlike || !hasOneForm(work));
  if (unlike.length > 0) refusals.add(trying, unlike, unlikeSides(paper));
  return paper.forms.flatMap((form, number) => {
    const sheets = fedSheets(form, feed, wanted);
    if (sheets.length === 0) refusals.add(trying, [], noSheetGoesIn(form, feed, unit));
    return sheets.flatMap((sheet) =>
      works.flatMap((work) => candidatesFor(trying, { form, number, sheet, work })),
    );
  });
}

interface Tried {
  readonly form: StockForm;
  /** Which form of the paper it is. */
  readonly number: number;
  readonly sheet: FedSheet;
  readonly work: Work;
}

/** The candidates of one sheet and one way of working: as many up as can be, and fewer ways to lie where that differs. */
function candidatesFor(trying: Trying, tried: Tried): readonly LaidCandidate[] {
  const { feed, paper, layouts, refusals } = trying;
  const { sheet, work } = tried;
  const on = {
    size: sheet.size,
    unprintable: feed.unprintable,
    hold: feed.hold,
    sidesAlike: paper.sidesAlike,
  };
  const best = layouts.lay(on, work, 'either');
  if (!best.ok) {
    refusals.add({ ...trying, sheet: sheet.size }, [work], best.fault);
    return [];
  }
  const others = layouts.oneWayLies(best.value).flatMap((lies) => {
    const other = layouts.lay(on, work, lies);
    return other.ok ? [candidateOf(trying, tried, lies, other.value)] : [];
  });
  return [candidateOf(trying, tried, 'either', best.value), ...others];
}

function candidateOf(
  { printer, feed, paper }: Trying,
  { number, sheet, work }: Tried,
  lies: Lies,
  layout: Layout,
): LaidCandidate {
  const { source, grain } = sheet;
  const size = sizeInPoints(sheet.size);
  const turn = 'turn' in work ? ` ${work.turn}` : '';
  const cut = source.is === 'parent' ? ` ${source.out} out` : source.is === 'roll' ? ` ${grain}` : '';
  return {
    id: [
      printer.name,
      feed.name,
      paper.name,
      `${number}${cut}`,
      sheetKey(size),
      `${work.style}${turn}`,
      lies,
    ].join(' | '),
    printer,
    feed,
    paper,
    source,
    sheet: sheet.size,
    size,
    lead: size.w <= size.h ? 'short' : 'long',
    grain,
    work,
    lies,
    ...layout,
    sides: work.style === 'simplex' ? 1 : 2,
    passes: work.style === 'simplex' || work.style === 'perfecting' ? 1 : 2,
    setUps: work.style === 'work-and-back' ? 2 : 1,
    notices: [...noticesOf(paper, work), ...layout.notices],
  };
}

function noticesOf(paper: Paper, work: Work): readonly string[] {
  return paper.coated === 'one-side' && work.style !== 'simplex'
    ? [`"${paper.name}" is coated on one side only: side 2 is printed on the other one.`]
    : [];
}

/** The ways of working that the job allows, whatever it is printed on. */
function worksOf(brief: Brief): readonly Work[] {
  const onAnyPaper = { ...brief, sheet: { ...brief.sheet, sidesAlike: true } };
  return WORKS.filter((work) => unfitFor(withWork(onAnyPaper, work)) === undefined);
}

function wantedOf(brief: Brief, cuts: CutCounter): CutFor {
  const gutter = points(brief.gutter);
  return {
    typed: brief.sheet.size,
    cells: brief.pieces.map((piece) => ({ ...cellOf(trimOf(piece), gutter), lies: piece.lies })),
    gutter,
    bleed: Math.max(...designsOf(brief).map((design) => design.bleed)),
    turned: brief.pieces.some((piece) => piece.back !== undefined),
    cuts,
  };
}

function partBy<T>(all: readonly T[], is: (one: T) => boolean): readonly [readonly T[], readonly T[]] {
  return [all.filter(is), all.filter((one) => !is(one))];
}
