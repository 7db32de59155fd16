// How many cuts through a pile free everything that lies on its sheets.
import { fewestCuts } from '../cutting/fewestCuts.ts';
import { fieldOf, wholeSheet } from '../cutting/field.ts';
import type { Rect, Size } from '../geometry/space.ts';

/** Enough for every line of a sheet of some twenty pieces in many sizes; grids need none of it. */
const EFFORT = 20_000;

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
    const cuts = fewestCuts(field, EFFORT)(whole);
    this.#known.set(key, cuts);
    return cuts;
  }
}
