// Why a job cannot be printed on a paper or a printer, in words.
import type { Fault } from '../fault/result.ts';
import { usableArea } from '../geometry/sheet.ts';
import { hasOneForm, turnOf } from '../geometry/work.ts';
import type { Brief } from '../job/brief.ts';
import { sheetOf } from '../job/job.ts';
import type { Caliper } from '../library/caliper.ts';
import type { Feed, Paper, Printer, StockForm } from '../library/library.ts';
import { points, type Unit } from '../units/length.ts';
import { showLength, showSize } from '../units/show.ts';
import { sizeInPoints } from './measures.ts';

export function tooThick(feed: string, thickest: Caliper, paper: Paper): Fault {
  return impossible(
    `"${paper.name}" is ${paper.caliper.typed} thick, and ${feed} takes up to ${thickest.typed}.`,
    'Take another feed or a thinner paper.',
  );
}

export function doesNotTurn(printer: Printer, feed: Feed): Fault {
  return impossible(
    `${feed.name} of ${printer.name} does not turn the sheet itself.`,
    'Turn the sheets by hand: take work-and-back or one form for both sides.',
  );
}

export function unlikeSides(paper: Paper): Fault {
  const why = paper.coated === 'one-side' ? 'is coated on one side only' : 'has two sides that are not alike';
  return impossible(
    `"${paper.name}" ${why}, and one form for both sides lets every piece come out on either side of the paper.`,
    'Take work-and-back, or a paper whose two sides are alike.',
  );
}

export function noSheetGoesIn(form: StockForm, feed: Feed, unit: Unit): Fault {
  const takes = `${feed.name} takes ${showSize(sizeInPoints(feed.least), unit)} to ${showSize(sizeInPoints(feed.most), unit)} (across × along the feed)`;
  switch (form.is) {
    case 'sheet':
      return impossible(
        `The ${showSize(sizeInPoints(form.size), unit)} sheet goes in with neither edge leading: ${takes}.`,
        'Take another feed or another sheet.',
      );
    case 'parent':
      return impossible(
        `No sheet that the ${showSize(sizeInPoints(form.size), unit)} parent sheet is cut to goes in: ${takes}.`,
        'Name a size to cut it to (cutTo) that goes in.',
      );
    case 'roll':
      return impossible(
        `No sheet of the ${showLength(points(form.width), unit)} wide roll goes in: ${takes}.`,
        'Take a narrower roll, or name a length to cut it to (cutTo) that goes in.',
      );
  }
}

export function bleedDoesNotFit(brief: Brief): Fault {
  const { size, unprintable } = sheetOf(brief);
  const turn = turnOf(brief.work);
  const { w, h } = usableArea(size, unprintable, turn) ?? { w: 0, h: 0 };
  const half = turn === 'side-to-side' ? { w: w / 2, h } : { w, h: h / 2 };
  const [part, printable] = hasOneForm(brief.work)
    ? (['one half of it', half] as const)
    : (['it', { w, h }] as const);
  return impossible(
    `The pieces fit the ${showSize(size, brief.units)} sheet, but their bleed does not fit inside what can be printed on ${part} (${showSize(printable, brief.units)}).`,
    'Take a larger sheet, a printer with narrower margins, or art with less bleed.',
  );
}

function impossible(message: string, remedy: string): Fault {
  return { code: 'plan-impossible', message, remedy };
}
