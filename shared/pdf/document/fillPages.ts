// Blocks shared out over pages: each page is filled from the top, and a block is never torn.
import type { Size } from '../../geometry/space.ts';
import { within } from '../../geometry/tolerance.ts';
import { type Block, below, place } from './block.ts';
import type { Shape } from './shape.ts';

/** The margins of a page, in pt: what an office printer prints everywhere. */
export const PAGE_MARGIN = 36;

/** Blocks that keep together, such as a heading and what it heads. */
export interface Passage {
  readonly blocks: readonly Block[];
  /** Between them. */
  readonly gap: number;
  /** Above them, where they are not the first on their page. */
  readonly above: number;
  /** Whether they begin a page. */
  readonly onNewPage?: boolean;
}

/** What stands at the head and the foot of every page. */
export interface Furniture {
  head(page: number, pages: number): Block;
  foot(page: number, pages: number): Block;
}

/**
 * The shapes of each page. Passages are not torn, unless one is taller than a page: then its blocks go on on the next.
 */
export function fillPages(
  paper: Size,
  passages: readonly Passage[],
  furniture: Furniture,
): readonly (readonly Shape[])[] {
  const head = furniture.head(1, 1).h;
  const foot = furniture.foot(1, 1).h;
  const top = paper.h - PAGE_MARGIN - head;
  const room = top - PAGE_MARGIN - foot;
  const pages: Shape[][] = [[]];
  let used = 0;
  const begin = () => {
    pages.push([]);
    used = 0;
  };
  const put = (block: Block) => {
    pages.at(-1)?.push(...place(block, PAGE_MARGIN, top - used));
    used += block.h;
  };
  for (const { blocks, gap, above, onNewPage = false } of passages) {
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
    ...place(furniture.head(i + 1, pages.length), PAGE_MARGIN, paper.h - PAGE_MARGIN),
    ...shapes,
    ...place(furniture.foot(i + 1, pages.length), PAGE_MARGIN, PAGE_MARGIN + foot),
  ]);
}
