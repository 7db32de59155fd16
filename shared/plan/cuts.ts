// How many cuts through a pile free everything that lies on its sheets.

import { type CuttingGrid, fieldOf, wholeSheet } from '../cutting/cuttingGrid.ts';
import { fewestCuts } from '../cutting/fewestCuts.ts';
import type { Rect, Size } from '../geometry/space.ts';

/** Enough for every line of a sheet of some twenty pieces in many sizes. */
const MAX_SEARCH_STEPS = 20_000;

/** Counts cuts, and remembers them: sheets of all sizes on which the pieces lie alike take the same. */
export class CutCounter {
  readonly #known = new Map<string, number>();

  /** The cuts through one pile; rectangles in pt on the sheet. Where no guillotine can part them it is infinite. */
  count(sheet: Size, pieces: readonly Rect<'side1'>[]): number {
    const field = fieldOf(sheet, pieces);
    const whole = wholeSheet(field);
    const trims = field.trims.map(({ left, right, tail, lead }) => `${left},${right},${tail},${lead}`);
    const key = [whole.right, whole.lead, ...trims].join(' ');
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const cuts = fewestCuts(field, isGrid(field) ? 0 : MAX_SEARCH_STEPS)(whole);
    this.#known.set(key, cuts);
    return cuts;
  }
}

/** Whether the pieces lie in whole rows and columns, which are cut one after the other: nothing has to be searched. */
function isGrid({ trims }: CuttingGrid): boolean {
  const columns = new Set(trims.map(({ left, right }) => `${left} ${right}`));
  const rows = new Set(trims.map(({ tail, lead }) => `${tail} ${lead}`));
  return columns.size * rows.size === trims.length;
}
