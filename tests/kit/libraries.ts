// Libraries for tests, as a person would write them: a hand-fed printer, a tray-fed one, and one paper.
import type { Library } from '../../shared/library/library.ts';
import { readLibrary } from '../../shared/library/readLibrary.ts';

/** A tray-fed printer of 11 x 17 in sheets with the margins of the supper's brief. */
export const trayPrinter = {
  name: 'Tray printer',
  feeds: [
    {
      name: 'Tray',
      least: '4 x 6 in',
      most: '13 x 19 in',
      thickest: '13 pt',
      unprintable: { lead: 0.2, tail: 0.3, left: 0.125, right: 0.125 },
      hold: { across: 'centre', along: 'lead' },
      turnsItself: false,
      attended: false,
      hand: { load: 2, align: 3, turn: 1 },
    },
  ],
  qualities: [
    { name: 'Usual', secondsBase: 10, secondsPerSquareMetre: 100 },
    { name: 'Fine', secondsBase: 20, secondsPerSquareMetre: 300 },
  ],
  makeReady: { minutes: 5, sheets: 2 },
  ink: { pricePerMl: 0.5, model: { source: 'rule-of-thumb', base: 0.5, perCoverage: 8, spread: 0.5 } },
  wearPerSide: 0.02,
} as const;

/** The same fed by hand, with ink that costs a fifth. */
export const handPrinter = {
  ...trayPrinter,
  name: 'Hand printer',
  feeds: [{ ...trayPrinter.feeds[0], name: 'Hand', attended: true, hand: { load: 20, align: 20, turn: 5 } }],
  ink: { ...trayPrinter.ink, pricePerMl: 0.1 },
} as const;

/** Uncoated card, 11 x 17 in at 100 a ream. */
export const card = {
  name: 'Card',
  weight: '100 lb cover',
  caliper: '10 pt',
  coated: 'none',
  forms: [{ is: 'sheet', size: '11 x 17 in', grain: 'long', price: { amount: 100, per: 'ream' } }],
} as const;

/** A cent for every second; cuts of 10 s, piles of 60 s, 200 sheets of the card to a pile. */
export const rates = {
  labourPerHour: 36,
  cutting: { secondsPerCut: 10, secondsPerPile: 60, tallestPile: '2 in' },
} as const;

/** A library as it is written, with some of it changed. */
export function writtenLibrary(changes: object = {}): Record<string, unknown> {
  return {
    schema: 1,
    units: 'in',
    currency: '$',
    rates,
    printers: [trayPrinter],
    papers: [card],
    ...changes,
  };
}

/** The same, read. */
export function libraryWith(changes: object = {}): Library {
  const read = readLibrary(writtenLibrary(changes));
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}
