// Counting: the sheets to print for the quantities, what each design gets out of them, and what is left over.

/** Sheets printed beyond those needed, for setting up and for spoilage: a share of the run, and a least number. */
export interface Overs {
  readonly percent: number;
  readonly least: number;
}

/**
 * What is taken when a brief says nothing of overs.
 *
 * @source Common practice, no source: three to ten in a hundred are in use, and a few sheets are always needed to
 * set the second side.
 */
export const USUAL_OVERS: Overs = { percent: 5, least: 3 };

/** What one design gets out of the run, in pieces. */
export interface Yield {
  readonly piece: string;
  readonly wanted: number;
  readonly perSheet: number;
  /** Out of the sheets needed, none spoiled. */
  readonly fromNeeded: number;
  /** What `fromNeeded` gives beyond what is wanted. */
  readonly leftOver: number;
}

export interface SheetCount {
  /** Good sheets that the quantities need. */
  readonly needed: number;
  readonly overs: number;
  /** To be loaded: needed and overs. */
  readonly sheets: number;
  readonly yields: readonly Yield[];
}

/** How many good sheets the order needs when each sheet yields `perSheet` pieces (>= 1) of a design. */
export function sheetsNeeded(wanted: number, perSheet: number): number {
  return Math.ceil(wanted / perSheet);
}

/** How many sheets are added to `needed` good ones; part of a sheet counts as a whole one. */
export function oversFor(needed: number, overs: Overs): number {
  return Math.max(overs.least, Math.ceil((needed * overs.percent) / 100));
}

/** The sheets for an order of several designs that share every sheet. `perSheet` is >= 1 for each. */
export function countSheets(
  designs: readonly { readonly piece: string; readonly wanted: number; readonly perSheet: number }[],
  overs: Overs,
): SheetCount {
  const needed = Math.max(0, ...designs.map((d) => sheetsNeeded(d.wanted, d.perSheet)));
  const extra = oversFor(needed, overs);
  return {
    needed,
    overs: extra,
    sheets: needed + extra,
    yields: designs.map((d) => ({
      ...d,
      fromNeeded: needed * d.perSheet,
      leftOver: needed * d.perSheet - d.wanted,
    })),
  };
}
