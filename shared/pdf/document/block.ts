// Blocks of a page: shapes with the room they take, set below and beside one another.
import { moveShapes, type Shape } from './shape.ts';

/** Shapes within a room whose upper left is the origin: x from 0 to `w`, y from `-h` to 0, in pt. */
export interface PageBlock {
  readonly w: number;
  readonly h: number;
  readonly shapes: readonly Shape[];
}

/** A block with its upper left at (x, y). */
export function place(block: PageBlock, x: number, y: number): readonly Shape[] {
  return moveShapes(block.shapes, x, y);
}

/** Nothing, of this height. */
export function space(h: number): PageBlock {
  return { w: 0, h, shapes: [] };
}

/** Blocks one below the other, flush left. */
export function below(blocks: readonly PageBlock[], gap: number): PageBlock {
  let top = 0;
  const shapes = blocks.flatMap((block) => {
    const placed = place(block, 0, -top);
    top += block.h + gap;
    return placed;
  });
  return { w: Math.max(0, ...blocks.map((b) => b.w)), h: Math.max(0, top - gap), shapes };
}

/** Blocks side by side, level at their tops. */
export function beside(blocks: readonly PageBlock[], gap: number): PageBlock {
  let left = 0;
  const shapes = blocks.flatMap((block) => {
    const placed = place(block, left, 0);
    left += block.w + gap;
    return placed;
  });
  return { w: Math.max(0, left - gap), h: Math.max(0, ...blocks.map((b) => b.h)), shapes };
}

/** A block moved to the right within a wider room. */
export function indent(block: PageBlock, by: number): PageBlock {
  return { w: block.w + by, h: block.h, shapes: place(block, by, 0) };
}

/** A block of at least this width and height. */
export function atLeast(block: PageBlock, w: number, h: number): PageBlock {
  return { ...block, w: Math.max(block.w, w), h: Math.max(block.h, h) };
}
