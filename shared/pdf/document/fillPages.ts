// Blocks shared out over pages: each page is filled from the top, and a block is never torn.
import type { Size } from '../../geometry/space.ts';
import { within } from '../../geometry/tolerance.ts';
import { below, type PageBlock, place } from './block.ts';
import type { Shape } from './shape.ts';

/** The margins of a page, in pt: what an office printer prints everywhere. */
export const PAGE_MARGIN_PT = 32;

/** Blocks that keep together, such as a heading and what it heads. */
export interface Passage {
  readonly blocks: readonly PageBlock[];
  /** Between them. */
  readonly gap: number;
  /** Above them, where they are not the first on their page. */
  readonly above: number;
  /** Whether they begin a page. */
  readonly onNewPage?: boolean;
}

/** What stands at the head and the foot of every page. */
export interface Furniture {
  head(page: number, pages: number): PageBlock;
  foot(page: number, pages: number): PageBlock;
}

/** How high what stands on a page may be, between its head and its foot, in pt. */
export function pageRoom(paper: Size, furniture: Furniture): number {
  return paper.h - 2 * PAGE_MARGIN_PT - furniture.head(1, 1).h - furniture.foot(1, 1).h;
}

/** How high passages are that stand on one page below others, in pt. */
export function heightOf(passages: readonly Passage[]): number {
  return passages
    .filter(({ blocks }) => blocks.length > 0)
    .reduce((sum, { blocks, gap, above }) => sum + above + below(blocks, gap).h, 0);
}

/**
 * The shapes of each page. Passages are not torn, unless one is taller than a page: then its blocks go on on the next.
 */
export function fillPages(
  paper: Size,
  passages: readonly Passage[],
  furniture: Furniture,
): readonly (readonly Shape[])[] {
  const foot = furniture.foot(1, 1).h;
  const room = pageRoom(paper, furniture);
  const top = PAGE_MARGIN_PT + foot + room;
  const pages: Shape[][] = [[]];
  let used = 0;
  const begin = () => {
    pages.push([]);
    used = 0;
  };
  const put = (block: PageBlock) => {
    pages.at(-1)?.push(...place(block, PAGE_MARGIN_PT, top - used));
    used += block.h;
  };
  for (const { blocks, gap, above, onNewPage = false } of passages) {
    if (blocks.length === 0) continue;
    const whole = below(blocks, gap);
    if (used > 0 && (onNewPage || !within(used + above + whole.h, room))) begin();
    if (used > 0) used += above;
    if (within(used + whole.h, room)) {
      put(whole);
      continue;
    }
    for (const block of blocks) {
      if (used > 0 && !within(used + block.h, room)) begin();
      put(block);
      used += gap;
    }
  }
  return pages.map((shapes, i) => [
    ...place(furniture.head(i + 1, pages.length), PAGE_MARGIN_PT, paper.h - PAGE_MARGIN_PT),
    ...shapes,
    ...place(furniture.foot(i + 1, pages.length), PAGE_MARGIN_PT, PAGE_MARGIN_PT + foot),
  ]);
}
