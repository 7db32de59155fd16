// Whether so many copies of each size fit one sheet together, and how.
import type { Size } from '../../geometry/space.ts';
import { blockOf, type CutTree } from './cutTree.ts';
import type { Fit } from './fewestSheets.ts';
import { joinParts } from './joinParts.ts';
import { layInKindBlocks } from './kindBlocks.ts';
import { type Effort, searchLimited } from './limitedSearch.ts';
import { layPartByPart } from './partByPart.ts';
import type { SizeOnSheet } from './sizes.ts';
import type { Way } from './ways.ts';

/** What one question may cost: a fraction of a second. */
const EFFORT: Effort = { stops: 320, pricing: 100e6, pairs: 2e6, boxes: 100_000 };

/**
 * Lays so many copies (>= 1) of each size out in the room (ticks), every size in one grid or two if that can be, else in
 * any way that edge-to-edge cuts allow. A cell's kind is the place of its size in the list. Every size must fit the room.
 */
export function fitTogether(
  sizes: readonly SizeOnSheet[],
  copies: readonly number[],
  room: Size,
): Fit<CutTree> {
  const areas = sizes.map(({ ways }) => {
    const { w, h } = ways[0] as Way;
    return w * h;
  });
  if (total(areas, copies) > room.w * room.h) return 'cannot';
  const inBlocks = layInKindBlocks(sizes, copies, room, 1) ?? layInKindBlocks(sizes, copies, room, 2);
  if (inBlocks !== undefined) return { layOut: () => inBlocks };

  // All copies are laid when the layout is worth as much as they are; a cell is worth what it covers.
  const smallest = Math.min(...areas);
  const values = areas.map((area) => Math.round((SHARES * area) / smallest));
  const ways = sizes.flatMap((size, kind) =>
    size.ways.map((way) => ({ ...way, kind, value: values[kind] as number })),
  );
  const search = searchLimited<CutTree>({ room, ways, values, copies }, total(values, copies), EFFORT, {
    block: ({ kind, onItsSide }, across, up) =>
      blockOf(kind, (sizes[kind] as SizeOnSheet).cell, { onItsSide, across, up }),
    join: joinParts,
  });
  if (search.isRuledOut(FEW_ROUNDS)) return 'cannot';
  const partByPart = layPartByPart(sizes, copies, room).tree;
  if (partByPart !== undefined) return { layOut: () => partByPart };
  const { found, proven } = search.run();
  if (found !== undefined) return { layOut: () => found.layout };
  return proven ? 'cannot' : 'unknown';
}

/** Prices that show that the copies are too many mostly do so at once. */
const FEW_ROUNDS = 2;

/** What the smallest cell is worth. */
const SHARES = 1000;

function total(each: readonly number[], copies: readonly number[]): number {
  return each.reduce((sum, one, k) => sum + one * (copies[k] as number), 0);
}
