// A library as a draft, so that it can be changed field by field.
import { type RuleOfThumb, USUAL_INK } from '../../../shared/ink/inkModel.ts';
import type { Feed, Library, Paper, Printer, StockForm } from '../../../shared/library/library.ts';
import { sizeTyped } from '../../draft/briefDraft.ts';
import type { DraftFeed, DraftForm, DraftInk, DraftPaper, DraftPrinter, LibraryDraft } from './draft.ts';
import { inHundred } from './hundredth.ts';

/** What parts one size from the next where several stand in one field. */
export const BETWEEN_SIZES = ';';

/** The draft of a library. Entries keep the keys that they have in `before`, the draft that the library was read from. */
export function libraryDraftOf(library: Library, before?: LibraryDraft): LibraryDraft {
  const { units, currency, rates, printers, papers } = library;
  return {
    units,
    currency,
    rates: {
      labourPerHour: String(rates.labourPerHour),
      overs: rates.overs.map(({ from, percent, least }, i) => ({
        key: before?.rates.overs[i]?.key ?? `overs ${i}`,
        from: String(from),
        percent: String(percent),
        least: String(least),
      })),
      secondsPerCut: String(rates.cutting.secondsPerCut),
      secondsPerPile: String(rates.cutting.secondsPerPile),
      tallestPile: rates.cutting.tallestPile.typed,
      widest: rates.cutting.widest.typed,
      deepest: rates.cutting.deepest.typed,
      opening: rates.cutting.opening.typed,
      leastGauge: rates.cutting.leastGauge.typed,
    },
    printers: printers.map((printer, i) => draftPrinterOf(printer, before?.printers[i])),
    papers: papers.map((paper, i) => draftPaperOf(paper, before?.papers[i])),
  };
}

export function draftPrinterOf(printer: Printer, before?: DraftPrinter): DraftPrinter {
  return {
    key: before?.key ?? `printer ${printer.name}`,
    name: printer.name,
    feeds: printer.feeds.map((feed, i) => draftFeedOf(feed, before?.feeds[i]?.key ?? `feed ${i}`)),
    qualities: printer.qualities.map(({ name, secondsBase, secondsPerSquareMetre }, i) => ({
      key: before?.qualities[i]?.key ?? `quality ${i}`,
      name,
      secondsBase: String(secondsBase),
      secondsPerSquareMetre: String(secondsPerSquareMetre),
    })),
    makeReady: {
      minutes: String(printer.makeReady.minutes),
      sheets: String(printer.makeReady.sheets),
    },
    wearPerSide: String(printer.wearPerSide),
    ink: draftInkOf(printer.ink, before?.ink),
  };
}

function draftFeedOf(feed: Feed, key: string): DraftFeed {
  const { name, least, most, thickest, unprintable, hold, turnsItself, attended, hand } = feed;
  return {
    key,
    name,
    least: sizeTyped(least),
    most: sizeTyped(most),
    thickest: thickest?.typed ?? '',
    unprintable: {
      lead: unprintable.lead.typed,
      tail: unprintable.tail.typed,
      left: unprintable.left.typed,
      right: unprintable.right.typed,
    },
    hold,
    turnsItself,
    attended,
    hand: { load: String(hand.load), align: String(hand.align), turn: String(hand.turn) },
  };
}

function draftInkOf({ pricePerMl, model, rule, readings }: Printer['ink'], before?: DraftInk): DraftInk {
  const inForce: RuleOfThumb = model.source === 'rule-of-thumb' ? model : (rule ?? USUAL_INK);
  return {
    pricePerMl: String(pricePerMl),
    rule: {
      base: String(inForce.base),
      perCoverage: String(inForce.perCoverage),
      spread: inHundred(inForce.spread),
    },
    fitted: model.source === 'fitted' ? model : undefined,
    readings: readings.map(({ date, job, area, coverage, ml }, i) => ({
      key: before?.readings[i]?.key ?? `reading ${i}`,
      date,
      job,
      area: String(area),
      coverage: inHundred(coverage),
      ml: String(ml),
    })),
  };
}

export function draftPaperOf(paper: Paper, before?: DraftPaper): DraftPaper {
  return {
    key: before?.key ?? `paper ${paper.name}`,
    name: paper.name,
    weight: paper.weight.typed,
    caliper: paper.caliper.typed,
    coated: paper.coated,
    sidesAlike: paper.sidesAlike,
    forms: paper.forms.map((form, i) => draftFormOf(form, before?.forms[i]?.key ?? `form ${i}`)),
  };
}

function draftFormOf(form: StockForm, key: string): DraftForm {
  const { amount, per } = form.price;
  const priced = { key, amount: String(amount), per };
  switch (form.is) {
    case 'sheet':
      return { ...priced, is: 'sheet', size: sizeTyped(form.size), grain: form.grain, cutTo: '' };
    case 'parent': {
      const cutTo = form.cutTo.map(sizeTyped).join(`${BETWEEN_SIZES} `);
      return { ...priced, is: 'parent', size: sizeTyped(form.size), grain: form.grain, cutTo };
    }
    case 'roll': {
      const cutTo = form.cutTo.map(({ typed }) => typed).join(`${BETWEEN_SIZES} `);
      return { ...priced, is: 'roll', size: form.width.typed, grain: 'unknown', cutTo };
    }
  }
}
