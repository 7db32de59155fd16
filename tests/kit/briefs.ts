// Briefs for tests, as a person would write them.

import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';

/** A card 5 x 7 in with 1/8 in bleed, two-sided, work-and-turn on 11 x 17 in. */
export const supperBrief = SUPPER_BRIEF;

/** The same brief with some fields of the brief, the sheet and the first piece changed. */
export function supperWith(
  changes: object,
  onPiece: object = {},
  onSheet: object = {},
): Record<string, unknown> & { pieces: Record<string, unknown>[] } {
  const [piece] = supperBrief.pieces;
  return {
    ...supperBrief,
    sheet: { ...supperBrief.sheet, ...onSheet },
    pieces: [{ ...piece, ...onPiece }],
    ...changes,
  };
}
