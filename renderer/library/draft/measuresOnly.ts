// A draft with nothing in it that could be wrong but its lengths, weights and calipers: a slip in a number or a name
// hides what is wrong with those, since they are read after it.
import type { DraftFeed, DraftForm, DraftPaper, DraftPrinter, LibraryDraft } from './draft.ts';

/** The draft with names, numbers and readings that are in order, its measures as they were typed. */
export function measuresOnly(draft: LibraryDraft): LibraryDraft {
  return {
    ...draft,
    currency: SOME,
    rates: { ...draft.rates, labourPerHour: SOME, overs: [], secondsPerCut: SOME, secondsPerPile: SOME },
    printers: draft.printers.map(printerMeasures),
    papers: draft.papers.map(paperMeasures),
  };
}

const SOME = '1';

function printerMeasures(printer: DraftPrinter, i: number): DraftPrinter {
  return {
    ...printer,
    name: String(i),
    feeds: printer.feeds.map(feedMeasures),
    qualities: [{ key: SOME, name: SOME, secondsBase: SOME, secondsPerSquareMetre: SOME }],
    makeReady: { minutes: SOME, sheets: SOME },
    wearPerSide: SOME,
    ink: {
      pricePerMl: SOME,
      rule: { base: SOME, perCoverage: SOME, spread: SOME },
      fitted: undefined,
      readings: [],
    },
  };
}

function feedMeasures(feed: DraftFeed, i: number): DraftFeed {
  return { ...feed, name: String(i), hand: { load: SOME, align: SOME, turn: SOME } };
}

function paperMeasures(paper: DraftPaper, i: number): DraftPaper {
  return { ...paper, name: String(i), forms: paper.forms.map(formMeasures) };
}

function formMeasures(form: DraftForm): DraftForm {
  return { ...form, amount: SOME };
}
