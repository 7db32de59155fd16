// The library that a studio begins with: printers and papers of no make, to be changed into its own.
import type { Library } from './library.ts';
import { readLibrary } from './readLibrary.ts';

/** Its makes, rates and prices are made up; the sizes of its sheets are those that paper is sold in. */
const WRITTEN = {
  schema: 1,
  units: 'in',
  currency: '$',
  rates: {
    labourPerHour: 30,
    overs: [
      { from: 0, percent: 5, least: 3 },
      { from: 250, percent: 4, least: 13 },
      { from: 1000, percent: 3, least: 40 },
    ],
    cutting: { secondsPerCut: 12, secondsPerPile: 90, tallestPile: '2 in' },
  },
  printers: [
    {
      name: 'Hand-fed sheet printer',
      feeds: [
        {
          name: 'Hand feed',
          least: '5 x 7 in',
          most: '17 x 23 in',
          thickest: '20 pt',
          unprintable: { lead: 0.2, tail: 0.5, left: 0.125, right: 0.125 },
          hold: { across: 'right', along: 'lead' },
          turnsItself: false,
          attended: true,
          hand: { load: 6, align: 8, turn: 3 },
        },
      ],
      qualities: [
        { name: 'Usual', secondsBase: 8, secondsPerSquareMetre: 110 },
        { name: 'Fast', secondsBase: 6, secondsPerSquareMetre: 60 },
      ],
      makeReady: { minutes: 6, sheets: 2 },
      ink: {
        pricePerMl: 0.09,
        model: { source: 'rule-of-thumb', base: 0.4, perCoverage: 8, spread: 0.5 },
      },
      wearPerSide: 0.02,
    },
    {
      name: 'Tray-fed sheet printer',
      feeds: [
        {
          name: 'Tray',
          least: '4 x 6 in',
          most: '13 x 19 in',
          thickest: '13 pt',
          unprintable: { lead: 0.125, tail: 0.25, left: 0.125, right: 0.125 },
          hold: { across: 'centre', along: 'lead' },
          turnsItself: false,
          attended: false,
          hand: { load: 0.3, align: 0, turn: 0.3 },
        },
        {
          name: 'Rear slot',
          least: '4 x 6 in',
          most: '13 x 26 in',
          thickest: '20 pt',
          unprintable: { lead: 0.125, tail: 0.5, left: 0.125, right: 0.125 },
          hold: { across: 'right', along: 'lead' },
          turnsItself: false,
          attended: true,
          hand: { load: 8, align: 6, turn: 3 },
        },
      ],
      qualities: [
        { name: 'Usual', secondsBase: 6, secondsPerSquareMetre: 300 },
        { name: 'Fine', secondsBase: 8, secondsPerSquareMetre: 600 },
      ],
      makeReady: { minutes: 4, sheets: 1 },
      ink: {
        pricePerMl: 0.65,
        model: { source: 'rule-of-thumb', base: 0.4, perCoverage: 8, spread: 0.5 },
      },
      wearPerSide: 0.01,
    },
    {
      name: 'Two-sided sheet printer',
      feeds: [
        {
          name: 'Tray',
          least: '5.5 x 8.5 in',
          most: '13 x 19 in',
          thickest: '16 pt',
          unprintable: { lead: '4.2 mm', tail: '4.2 mm', left: '4.2 mm', right: '4.2 mm' },
          hold: { across: 'centre', along: 'lead' },
          turnsItself: true,
          attended: false,
          hand: { load: 0.2, align: 0, turn: 0.2 },
        },
      ],
      qualities: [{ name: 'Usual', secondsBase: 1.5, secondsPerSquareMetre: 10 }],
      makeReady: { minutes: 8, sheets: 4 },
      ink: {
        pricePerMl: 0.7,
        model: { source: 'rule-of-thumb', base: 0.1, perCoverage: 4, spread: 0.5 },
      },
      wearPerSide: 0.05,
    },
  ],
  papers: [
    {
      name: 'Uncoated card',
      weight: '100 lb cover',
      caliper: '13 pt',
      coated: 'none',
      forms: [
        { is: 'sheet', size: '11 x 17 in', grain: 'long', price: { amount: 105, per: 'ream' } },
        { is: 'sheet', size: '12 x 18 in', grain: 'long', price: { amount: 120, per: 'ream' } },
        { is: 'sheet', size: '13 x 19 in', grain: 'long', price: { amount: 140, per: 'ream' } },
        { is: 'parent', size: '26 x 40 in', grain: 'long', price: { amount: 0.98, per: 'sheet' } },
      ],
    },
    {
      name: 'Silk card, coated both sides',
      weight: '300 gsm',
      caliper: '300 um',
      coated: 'both-sides',
      forms: [
        { is: 'sheet', size: '320 x 450 mm', grain: 'long', price: { amount: 0.24, per: 'sheet' } },
        { is: 'parent', size: '640 x 900 mm', grain: 'long', price: { amount: 3.6, per: 'kg' } },
      ],
    },
    {
      name: 'Postcard board, coated one side',
      weight: '240 gsm',
      caliper: '14 pt',
      coated: 'one-side',
      forms: [{ is: 'sheet', size: '13 x 19 in', grain: 'long', price: { amount: 0.3, per: 'sheet' } }],
    },
    {
      name: 'Cotton paper on the roll',
      weight: '310 gsm',
      caliper: '0.45 mm',
      coated: 'one-side',
      forms: [{ is: 'roll', width: '17 in', price: { amount: 5.4, per: 'metre' } }],
    },
  ],
} as const;

/** Printers, papers and rates to begin with. */
export function startingLibrary(): Library {
  const read = readLibrary(WRITTEN);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}
