// The sizes that sheets are sold in, offered where a paper is entered.
import { type Length, lengthOf, type Unit } from '../units/length.ts';

/** One size, the shorter edge first. */
export interface SheetSize {
  readonly name: string;
  readonly size: readonly [Length, Length];
}

/**
 * Sheets and parent sheets as they are sold.
 *
 * @source ISO 216 for the A and B sizes; ISO 217 for RA and SRA (from memory but for RA1 and SRA1, which JDF Appendix G
 * prints); the sizes in inches are common practice, no source.
 */
const SIZES: readonly (readonly [string, number, number, Unit])[] = [
  ['A4', 210, 297, 'mm'],
  ['A3', 297, 420, 'mm'],
  ['A2', 420, 594, 'mm'],
  ['RA4', 215, 305, 'mm'],
  ['RA3', 305, 430, 'mm'],
  ['RA2', 430, 610, 'mm'],
  ['RA1', 610, 860, 'mm'],
  ['SRA4', 225, 320, 'mm'],
  ['SRA3', 320, 450, 'mm'],
  ['SRA2', 450, 640, 'mm'],
  ['SRA1', 640, 900, 'mm'],
  ['B3', 353, 500, 'mm'],
  ['B2', 500, 707, 'mm'],
  ['B1', 707, 1000, 'mm'],
  ['8.5 × 11 in', 8.5, 11, 'in'],
  ['8.5 × 14 in', 8.5, 14, 'in'],
  ['9 × 12 in', 9, 12, 'in'],
  ['11 × 17 in', 11, 17, 'in'],
  ['12 × 18 in', 12, 18, 'in'],
  ['13 × 19 in', 13, 19, 'in'],
  ['17 × 22 in', 17, 22, 'in'],
  ['18 × 24 in', 18, 24, 'in'],
  ['20 × 26 in', 20, 26, 'in'],
  ['23 × 35 in', 23, 35, 'in'],
  ['25 × 38 in', 25, 38, 'in'],
  ['26 × 40 in', 26, 40, 'in'],
  ['28 × 40 in', 28, 40, 'in'],
];

export const SHEET_SIZES: readonly SheetSize[] = SIZES.map(([name, short, long, unit]) => ({
  name,
  size: [lengthOf(short, unit), lengthOf(long, unit)],
}));
