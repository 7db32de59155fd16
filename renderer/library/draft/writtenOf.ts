// The draft of a library as it would be written in JSON; what is left empty is left out.
import { LIBRARY_SCHEMA } from '../../../shared/library/library.ts';
import { numberIn } from '../../controls/numberIn.ts';
import type { DraftFeed, DraftForm, DraftInk, DraftPaper, DraftPrinter, LibraryDraft } from './draft.ts';
import { BETWEEN_SIZES } from './draftOf.ts';
import { shareIn } from './hundredth.ts';

export function writtenLibraryOf({ units, currency, rates, printers, papers }: LibraryDraft): unknown {
  return {
    schema: LIBRARY_SCHEMA,
    units,
    currency,
    rates: {
      labourPerHour: numberIn(rates.labourPerHour),
      overs: rates.overs.map(({ from, percent, least }) => ({
        from: numberIn(from),
        percent: numberIn(percent),
        least: numberIn(least),
      })),
      cutting: {
        secondsPerCut: numberIn(rates.secondsPerCut),
        secondsPerPile: numberIn(rates.secondsPerPile),
        tallestPile: rates.tallestPile,
        widest: rates.widest,
        deepest: rates.deepest,
        opening: rates.opening,
        leastGauge: rates.leastGauge,
      },
    },
    printers: printers.map(writtenPrinter),
    papers: papers.map(writtenPaper),
  };
}

function writtenPrinter({ name, feeds, qualities, makeReady, wearPerSide, ink }: DraftPrinter): unknown {
  return {
    name,
    feeds: feeds.map(writtenFeed),
    qualities: qualities.map((quality) => ({
      name: quality.name,
      secondsBase: numberIn(quality.secondsBase),
      secondsPerSquareMetre: numberIn(quality.secondsPerSquareMetre),
    })),
    makeReady: { minutes: numberIn(makeReady.minutes), sheets: numberIn(makeReady.sheets) },
    ink: writtenInk(ink),
    wearPerSide: numberIn(wearPerSide),
  };
}

function writtenFeed({ key: _, thickest, hand, ...feed }: DraftFeed): unknown {
  return {
    ...feed,
    ...(thickest.trim() === '' ? {} : { thickest }),
    hand: { load: numberIn(hand.load), align: numberIn(hand.align), turn: numberIn(hand.turn) },
  };
}

function writtenInk({ pricePerMl, rule, fitted, readings }: DraftInk): unknown {
  const ruleOfThumb = {
    source: 'rule-of-thumb',
    base: numberIn(rule.base),
    perCoverage: numberIn(rule.perCoverage),
    spread: shareIn(rule.spread),
  };
  return {
    pricePerMl: numberIn(pricePerMl),
    model: fitted ?? ruleOfThumb,
    ...(fitted === undefined ? {} : { rule: ruleOfThumb }),
    readings: readings.map(({ date, job, area, coverage, ml }) => ({
      date: date.trim(),
      job,
      area: numberIn(area),
      coverage: shareIn(coverage),
      ml: numberIn(ml),
    })),
  };
}

function writtenPaper({ key: _, forms, ...paper }: DraftPaper): unknown {
  return { ...paper, forms: forms.map(writtenForm) };
}

function writtenForm({ is, size, grain, amount, per, cutTo }: DraftForm): unknown {
  const price = { amount: numberIn(amount), per };
  const cuts = cutTo.split(BETWEEN_SIZES).filter((cut) => cut.trim() !== '');
  switch (is) {
    case 'sheet':
      return { is, size, grain, price };
    case 'parent':
      return { is, size, grain, price, cutTo: cuts };
    case 'roll':
      return { is, width: size, price, cutTo: cuts };
  }
}
