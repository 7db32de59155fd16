// Of the layouts that are worth most, the one with the fewest blocks: it is the easiest to cut.
import type { BestBlock, Builder, Cuts, OfferedWay, UnlimitedSearch } from './unlimitedSearch.ts';

/** How a part is laid: one block, two parts, or nothing where nothing fits. */
interface Making {
  readonly blocks: number;
  readonly block?: BestBlock;
  readonly cut?: { readonly way: Cuts['way']; readonly near: number; readonly far: number };
}

/**
 * A best layout of a part with the fewest blocks, or `undefined` where nothing fits. Only cuts that keep the whole value
 * are looked at, so that the search for the value itself need not compare layouts of equal value.
 */
export function layInFewestBlocks<T>(
  search: UnlimitedSearch,
  whole: number,
  builder: Builder<T>,
): T | undefined {
  const known = new Map<number, Making>();

  function makingOf(part: number): Making {
    const before = known.get(part);
    if (before !== undefined) return before;
    const making = make(part);
    known.set(part, making);
    return making;
  }

  function make(part: number): Making {
    const value = search.valueOf(part);
    const block = search.blockIn(part);
    if (value === 0) return { blocks: 0 };
    if (block.value === value) return { blocks: 1, block };
    let best: Making = { blocks: Infinity };
    for (const cuts of search.cutsOf(part)) best = cutInTwo(best, value, cuts);
    return best;
  }

  /** The best of all cuts one way, the most even first, that keep the value. */
  function cutInTwo(before: Making, value: number, { way, pairs, base, stride }: Cuts): Making {
    let best = before;
    for (let p = pairs.length - 2; p >= 0 && best.blocks > 2; p -= 2) {
      const near = base + (pairs[p] as number) * stride;
      const far = base + (pairs[p + 1] as number) * stride;
      if (search.together(near, far, value) < value) continue;
      if (leastBlocks(near) + leastBlocks(far) >= best.blocks) continue;
      const nearBlocks = makingOf(near).blocks;
      if (nearBlocks + leastBlocks(far) >= best.blocks) continue;
      const blocks = nearBlocks + makingOf(far).blocks;
      if (blocks < best.blocks) best = { blocks, cut: { way, near, far } };
    }
    return best;
  }

  /** A part that is worked out has this many blocks at least. */
  function leastBlocks(part: number): number {
    const making = known.get(part);
    if (making !== undefined) return making.blocks;
    const value = search.valueOf(part);
    if (value === 0) return 0;
    return search.blockIn(part).value === value ? 1 : 2;
  }

  function layoutOf(part: number): T | undefined {
    const { block, cut } = makingOf(part);
    if (block !== undefined) return builder.block(block.way as OfferedWay, block.across, block.up);
    if (cut === undefined) return undefined;
    const [near, far] = [layoutOf(cut.near), layoutOf(cut.far)];
    // The far part is the longer one: nothing lies in it only where nothing lies in the near one either.
    if (far === undefined || near === undefined) return far;
    return builder.join(cut.way, [near, far]);
  }

  return layoutOf(whole);
}
