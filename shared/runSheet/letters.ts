// Letters that stand for the designs of a sheet, where there are several.
import { letterFor } from '../cutting/letters.ts';
import type { Job } from '../job/job.ts';

/** The letter of each design by its name; none where there is one design only. */
export function lettersOf({ brief }: Job): ReadonlyMap<string, string> {
  if (brief.pieces.length < 2) return new Map();
  return new Map(brief.pieces.map((piece, i) => [piece.name, letterFor(i)]));
}
