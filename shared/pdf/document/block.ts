// Blocks of a page: shapes with the room they take, set below and beside one another.
import { moveShapes, type Shape } from './shape.ts';

/** Shapes within a room whose upper left is the origin: x from 0 to `w`, y from `-h` to 0, in pt. */
export interface Block {
  readonly w: number;
  readonly h: number;
  readonly shapes: readonly Shape[];
}

/** A block with its upper left at (x, y). */
export function place(block: Block, x: number, y: number): readonly Shape[] {
  return moveShapes(block.shapes, x, y);
}

/** Nothing, of this height. */
export function space(h: number): Block {
  return { w: 0, h, shapes: [] };
}

/** Blocks one below the other, flush left. */
export function below(blocks: readonly Block[], gap: number): Block {
  let top = 0;
  const shapes = blocks.flatMap((block) => {
    const placed = place(block, 0, -top);
    top += block.h + gap;
    return placed;
  });
  return { w: Math.max(0, ...blocks.map((b) => b.w)), h: Math.max(0, top - gap), shapes };
}

/** Blocks side by side, level at their tops. */
export function beside(blocks: readonly Block[], gap: number): Block {
  let left = 0;
  const shapes = blocks.flatMap((block) => {
    const placed = place(block, left, 0);
    left += block.w + gap;
    return placed;
  });
  return { w: Math.max(0, left - gap), h: Math.max(0, ...blocks.map((b) => b.h)), shapes };
}

/** A block moved to the right within a wider room. */
export function indent(block: Block, by: number): Block {
  return { w: block.w + by, h: block.h, shapes: place(block, by, 0) };
}

/** A block of at least this width and height. */
export function atLeast(block: Block, w: number, h: number): Block {
  return { ...block, w: Math.max(block.w, w), h: Math.max(block.h, h) };
}
