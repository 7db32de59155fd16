// What the sliders change: quantity, price of work and price of ink, each as a share of what it is.
import type { Brief } from '../../shared/job/brief.ts';
import type { Library } from '../../shared/library/library.ts';
import { piecesWanted, type WhatIf } from '../../shared/plan/whatIf.ts';
import { showMoney, showNumber } from '../../shared/units/show.ts';

export interface Ratios {
  readonly quantity: number;
  readonly labour: number;
  readonly ink: number;
}

export const AS_THEY_ARE: Ratios = { quantity: 1, labour: 1, ink: 1 };

/** What the plan is to reckon with instead. */
export function whatIfOf({ quantity, labour, ink }: Ratios, brief: Brief, library: Library): WhatIf {
  return {
    pieces: Math.max(1, Math.round(piecesWanted(brief) * quantity)),
    labourPerHour: library.rates.labourPerHour * labour,
    inkPrices: Object.fromEntries(library.printers.map((p) => [p.name, p.ink.pricePerMl * ink])),
  };
}

/** What each slider comes to. */
export function ratiosInWords(
  ratios: Ratios,
  brief: Brief,
  library: Library,
): Readonly<Record<keyof Ratios, string>> {
  const { pieces, labourPerHour = 0 } = whatIfOf(ratios, brief, library);
  return {
    quantity: `${pieces} pieces`,
    labour: `${showMoney(labourPerHour, library.currency)} an hour`,
    ink: ratios.ink === 1 ? 'as each printer has it' : `${showNumber(ratios.ink, 2)} times as dear`,
  };
}
