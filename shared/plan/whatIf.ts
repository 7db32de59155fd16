// What a plan reckons with besides its layouts: how many are wanted, what time and ink cost, how fine is printed.
import type { Brief } from '../job/brief.ts';
import { sheetsNeeded } from '../layout/count.ts';
import type { Printer, Quality } from '../library/library.ts';

/** What is taken in place of what the brief and the library say; what is not named stays as it is. */
export interface WhatIf {
  /** Pieces of all designs together, in the proportions of the brief; a whole number from 1. */
  readonly pieces?: number | undefined;
  readonly labourPerHour?: number | undefined;
  /** Prices of ink per ml, by printer. */
  readonly inkPrices?: Readonly<Record<string, number>> | undefined;
  /** The quality that is printed in, by printer; else its usual one. */
  readonly qualities?: Readonly<Record<string, string>> | undefined;
}

/** Pieces that the brief wants, of all designs together. */
export function piecesWanted(brief: Brief): number {
  return brief.pieces.reduce((sum, piece) => sum + piece.quantity, 0);
}

/** How many of each design are wanted if so many are wanted together; each at least its share. */
export function quantitiesFor(brief: Brief, pieces: number): readonly number[] {
  const all = piecesWanted(brief);
  return brief.pieces.map(({ quantity }) => Math.ceil((quantity * pieces) / all));
}

/** Good sheets for so many of each design; the designs share every sheet, which yields so many of each. */
export function sheetsFor(wanted: readonly number[], perSheet: readonly number[]): number {
  let most = 0;
  perSheet.forEach((each, i) => {
    most = Math.max(most, sheetsNeeded(wanted[i] as number, each));
  });
  return most;
}

export function qualityOf({ name, qualities }: Printer, { qualities: wanted }: WhatIf): Quality {
  return qualities.find((quality) => quality.name === wanted?.[name]) ?? qualities[0];
}

export function inkPriceOf({ name, ink }: Printer, { inkPrices }: WhatIf): number {
  return inkPrices?.[name] ?? ink.pricePerMl;
}
