// How much of a stranger's PDF is read before it counts as too large.

/** The limits on one PDF. All of them end in a refusal in words, none in a shorter reading. */
export interface ArtLimits {
  /** Pages in the file. */
  readonly pages: number;
  /** Length of a page's side that is refused, in pt. */
  readonly side: number;
  /** Nodes between the root of the page tree and a page. */
  readonly treeDepth: number;
  /** Objects copied out of the file. */
  readonly objects: number;
  /** Arrays and dictionaries nested in one object. */
  readonly nesting: number;
  /** Bytes that the drawing of one page, or one of its streams that has to be read, may unpack to. */
  readonly unpacked: number;
}

/**
 * The limits used unless a caller sets others.
 *
 * @source A side of 14 400 units (200 in) is the largest page that PDF readers had to take: ISO 32000-1, Annex C.2.
 * The others are common practice, no source: far above what a card, a menu or a booklet needs.
 */
export const ART_LIMITS: ArtLimits = {
  pages: 2_000,
  side: 14_400,
  treeDepth: 500,
  objects: 1_000_000,
  nesting: 200,
  unpacked: 256 * 1024 * 1024,
};
