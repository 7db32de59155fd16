// How many pieces of each design one sheet yields, and how many good sheets an order needs of it.
import type { Brief } from '../job/brief.ts';
import { sheetsNeeded } from '../layout/count.ts';
import type { LaidCandidate } from './candidate.ts';

/** Pieces of each design on a sheet, in the order of the brief. */
export function perSheetOf({ arrangement }: LaidCandidate, brief: Brief): readonly number[] {
  return brief.pieces.map(({ name }) => arrangement.filter((position) => position.piece === name).length);
}

/** Good sheets for so many of each design; the designs share every sheet. */
export function sheetsFor(wanted: readonly number[], perSheet: readonly number[]): number {
  return Math.max(...perSheet.map((each, i) => sheetsNeeded(wanted[i] ?? 0, each)));
}
