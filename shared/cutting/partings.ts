// The cuts that a part offers, each worked out once, when it is first asked for.

import { type CuttingGrid, clearLines, type LineWay, type Part, partAt, partKey } from './cuttingGrid.ts';

/** A line and what lies on either side of it; `excess` is how many cuts more than the fewest it leads to. */
export interface Parting {
  readonly line: number;
  readonly low: Part;
  readonly high: Part;
  readonly excess: number;
}

/** Gives the cuts of any part, by line, from the low end or from the high one. */
export type Partings = (part: Part, way: LineWay, fromHigh: boolean) => Iterable<Parting>;

/** `excessOf` says what a cut of the whole (first) into two parts costs beyond the fewest cuts. */
export function partingsIn(
  field: CuttingGrid,
  excessOf: (whole: Part, low: Part, high: Part) => number,
): Partings {
  const known = new Map<string, { readonly lines: readonly number[]; readonly made: Parting[] }>();

  function offersOf(part: Part, way: LineWay) {
    const key = `${partKey(part)} ${way}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const offers = { lines: clearLines(field, part, way), made: [] };
    known.set(key, offers);
    return offers;
  }

  function make(part: Part, way: LineWay, line: number): Parting {
    const [low, high] = partAt(field, part, way, line);
    return { line, low, high, excess: excessOf(part, low, high) };
  }

  return function* (part, way, fromHigh) {
    const { lines, made } = offersOf(part, way);
    for (let k = 0; k < lines.length; k++) {
      const at = fromHigh ? lines.length - 1 - k : k;
      const line = lines[at];
      if (line === undefined) continue;
      const parting = made[at] ?? make(part, way, line);
      made[at] = parting;
      yield parting;
    }
  };
}
