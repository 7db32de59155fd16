// A printer's ink in words: where its figures come from, and how far off they may be.
import { coefficientIntervals } from '../../../shared/ink/fitInk.ts';
import { type InkModel, predictInk } from '../../../shared/ink/inkModel.ts';
import { showSignificant } from '../../../shared/units/show.ts';
import { inHundred } from '../draft/hundredth.ts';

/** Where the model comes from and what it reckons with, a sentence each. */
export function inkInWords(model: InkModel): readonly string[] {
  switch (model.source) {
    case 'rule-of-thumb':
      return [
        `A rule of thumb: ${lawInWords(ml(model.base), ml(model.perCoverage))}`,
        `The truth may lie ${inHundred(model.spread)} % off, either way. Readings of the printer’s own counter make it surer.`,
      ];
    case 'fitted': {
      const { base, perCoverage } = coefficientIntervals(model);
      return [
        `Fitted: ${lawInWords(`${ml(model.base)} (${between(base)})`, `${ml(model.perCoverage)} (${between(perCoverage)})`)}`,
        'The bounds hold 19 times in 20.',
      ];
    }
  }
}

const lawInWords = (base: string, perCoverage: string) =>
  `${base} for every m² printed, and ${perCoverage} more for every m² that one ink covers whole.`;

/** Nobody takes less than no ink, wherever the bounds of a fit may lie. */
const between = ({ low, high }: { readonly low: number; readonly high: number }) =>
  `${ml(Math.max(0, low))} to ${ml(high)}`;

/** Coverages that show the whole of what is printed: type, pictures, full colour to the edge. */
const SHOWN = [0.2, 1, 2];

interface InkExample {
  /** In a hundred of one ink. */
  readonly coverage: string;
  readonly takes: string;
  readonly between: string;
}

/** What a square metre takes at a few coverages, and between which bounds. */
export function inkExamples(model: InkModel): readonly InkExample[] {
  return SHOWN.map((coverage) => {
    const amount = predictInk(model, { area: 1, coverage });
    return {
      coverage: inHundred(coverage),
      takes: ml(amount.ml),
      between: between(amount),
    };
  });
}

/** An amount of ink as it is read, figure and unit kept together: three figures are more than any counter is sure of. */
export function ml(amount: number): string {
  return `${amount >= 100 ? Math.round(amount) : showSignificant(amount, 3)}\u00a0ml`;
}
