// Briefs for tests, as a person would write them.

/** A card 5 x 7 in with 1/8 in bleed, two-sided, work-and-turn on 11 x 17 in. */
export const supperBrief = {
  units: 'in',
  title: 'Harvest supper',
  sheet: { size: [11, 17], unprintable: { lead: 0.2, tail: 0.3, left: 0.125, right: 0.125 } },
  work: 'work-and-turn',
  gutter: 0.25,
  marks: true,
  pieces: [
    {
      name: 'Supper',
      trim: [5, 7],
      bleed: 0.125,
      safe: 0.125,
      turned: 'head-to-head',
      quantity: 120,
      front: { file: 'supper.pdf', page: 1 },
      back: { file: 'supper.pdf', page: 2 },
    },
  ],
} as const;

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
