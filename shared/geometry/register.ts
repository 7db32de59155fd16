// Register: which edges hold the sheet in each pass, and what an error in the paper's size does to the back-up.
import type { SheetEdge } from './sheet.ts';
import type { Turn } from './turn.ts';

/** The two opposite edges whose margins must be equal when one form serves both passes. */
export function registerEdges(turn: Turn): readonly [SheetEdge, SheetEdge] {
  return turn === 'side-to-side' ? ['left', 'right'] : ['lead', 'tail'];
}

/** How the printer holds the sheet across the feed (at a side guide or centred) and along it. */
export interface SheetHold {
  readonly across: 'left' | 'right' | 'centre';
  readonly along: 'lead' | 'centre';
}

/** What an error in the size of the paper does to a two-sided sheet. */
export interface PaperError {
  /** The dimension of the sheet that matters. */
  readonly dimension: 'width' | 'length';
  /** The paper's edge that is laid to the guide in pass 1 and the one in pass 2, as named on side 1; none if centred. */
  readonly laidTo: readonly [SheetEdge, SheetEdge] | undefined;
  /** Which share of an error in that dimension lies between front and back. */
  readonly betweenSides: 0 | 1;
  /** Which share of it lies between the image and the nearer of the two edges, on either side. */
  readonly toEdge: 0.5 | 1;
  /** The same in plain words. */
  readonly words: string;
}

/**
 * What a sheet that is cut `d` too wide (or too long) does to the back-up.
 *
 * Laid against an edge, the turn changes which edge of the paper that is, and the whole of `d` goes between front
 * and back. Centred, both passes find the same middle, so front and back still meet and each margin takes half of `d`.
 *
 * @source Derived; proved by laying and turning a wrong sheet in the tests. Gray 1918 for the habit of trimming and
 * marking the edges that are laid.
 */
export function paperError(turn: Turn, hold: SheetHold): PaperError {
  const dimension = turn === 'side-to-side' ? 'width' : 'length';
  const guide = turn === 'side-to-side' ? hold.across : hold.along;
  if (guide === 'centre') {
    return {
      dimension,
      laidTo: undefined,
      betweenSides: 0,
      toEdge: 0.5,
      words: `The printer centres the sheet, so an error in its ${dimension} does not part front and back; half of it goes into each margin.`,
    };
  }
  const [first, second] = registerEdges(turn);
  const laidTo = guide === first ? ([first, second] as const) : ([second, first] as const);
  return {
    dimension,
    laidTo,
    betweenSides: 1,
    toEdge: 1,
    words: `Pass 1 lays the sheet to its ${laidTo[0]} edge, pass 2 to its ${laidTo[1]} edge: the whole of an error in the sheet's ${dimension} goes between front and back. Trim both of these edges square and to one size before printing.`,
  };
}
