// Letters that stand for the designs of a sheet, where there are several.
import type { Job } from '../job/job.ts';

/** A for the first, Z for the 26th, AA for the next. `index` counts from 0. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${letterOf(Math.floor(index / 26) - 1)}${last}`;
}

/** The letter of each design by its name; none where there is one design only. */
export function lettersOf({ brief }: Job): ReadonlyMap<string, string> {
  if (brief.pieces.length < 2) return new Map();
  return new Map(brief.pieces.map((piece, i) => [piece.name, letterOf(i)]));
}
