// Every size in a plain grid of its own, or in two, the grids parted by edge-to-edge cuts: easy to cut and to sort.
import type { Size } from '../../geometry/space.ts';
import { blockOf, type CutTree } from './cutTree.ts';
import { gridsFor } from './grid.ts';
import { joinParts } from './joinParts.ts';
import type { SizeOnSheet } from './sizes.ts';

/** With more sizes it is not tried: the ways to part them are 3 to the power of their number. */
const MOST_SIZES = 7;

/** One shape (ticks) that some of the sizes can take together, and how. */
interface Shape extends Size {
  readonly tree: () => CutTree;
}

/**
 * A layout of so many copies of each size with each size in one grid, or in two next to each other, or `undefined` where
 * there is none. It tries every grid and every parting of the sizes; of all that fit the room (ticks) it takes the one
 * that covers least, and of those the squarest. A cell's kind is the place of its size in the list.
 *
 * @source L. Stockmeyer, Information and Control 57 (1983) 91-101: shapes of slicing floor plans (from memory).
 */
export function layInKindBlocks(
  sizes: readonly SizeOnSheet[],
  copies: readonly number[],
  room: Size,
  gridsEach: 1 | 2,
): CutTree | undefined {
  if (sizes.length > MOST_SIZES) return undefined;
  // Sets of sizes as the bits of a number, each with its shapes; larger sets after the sets they are made of.
  const shapes: (readonly Shape[])[] = [];
  const every = 2 ** sizes.length - 1;
  for (let set = 1; set <= every; set++) {
    const alone = Math.log2(set);
    const found = Number.isInteger(alone)
      ? shapesAlone(alone)
      : partings(set).flatMap(([a, b]) => joined(a, b));
    shapes[set] = withoutLarger(found);
  }
  const smallest = shapes[every]?.toSorted((a, b) => a.w * a.h - b.w * b.h || a.w + a.h - b.w - b.h)[0];
  return smallest?.tree();

  function shapesAlone(kind: number): Shape[] {
    const count = copies[kind] as number;
    const shapes = gridShapes(kind, count);
    for (let few = 1; gridsEach === 2 && few <= count / 2; few++) {
      shapes.push(...joined(gridShapes(kind, few), gridShapes(kind, count - few)));
    }
    return shapes;
  }

  function gridShapes(kind: number, count: number): Shape[] {
    const { cell, ways } = sizes[kind] as SizeOnSheet;
    return ways.flatMap((way) =>
      gridsFor(count, way, room).map((grid) => ({
        w: grid.across * way.w,
        h: grid.up * way.h,
        tree: () => blockOf(kind, cell, grid, count),
      })),
    );
  }

  /** The two parts of each way to part a set, each pair once. */
  function partings(set: number): (readonly [readonly Shape[], readonly Shape[]])[] {
    const pairs: (readonly [readonly Shape[], readonly Shape[]])[] = [];
    for (let part = (set - 1) & set; part > set - part; part = (part - 1) & set) {
      pairs.push([shapes[part] ?? [], shapes[set - part] ?? []]);
    }
    return pairs;
  }

  function joined(ones: readonly Shape[], others: readonly Shape[]): Shape[] {
    return ones
      .flatMap((a) => others.flatMap((b) => [besideEachOther(a, b), onEachOther(a, b)]))
      .filter((shape) => shape.w <= room.w && shape.h <= room.h);
  }
}

function besideEachOther(a: Shape, b: Shape): Shape {
  return {
    w: a.w + b.w,
    h: Math.max(a.h, b.h),
    tree: () => joinParts('side-by-side', [a.tree(), b.tree()]),
  };
}

function onEachOther(a: Shape, b: Shape): Shape {
  return { w: Math.max(a.w, b.w), h: a.h + b.h, tree: () => joinParts('stacked', [a.tree(), b.tree()]) };
}

/** The shapes that no other is at least as small as in both directions. */
function withoutLarger(shapes: readonly Shape[]): Shape[] {
  const kept: Shape[] = [];
  for (const shape of shapes.toSorted((a, b) => a.w - b.w || a.h - b.h)) {
    const lowest = kept.at(-1);
    if (lowest === undefined || shape.h < lowest.h) kept.push(shape);
  }
  return kept;
}
