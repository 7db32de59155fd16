// How long the forms of a gang run must run, their copies given: fast enough to try millions of copies.
import { createTableau } from './tableau.ts';

/** One copy of a design more (1) or less (-1) on a form. */
export interface CopyChange {
  readonly form: number;
  readonly design: number;
  readonly by: 1 | -1;
}

/** Least sums of run lengths, not yet rounded to whole sheets; infinite where a design is on no form. */
export interface RunLengths {
  /** For these copies: `copies[form * designs + design]`. */
  least(copies: Int32Array): number;
  /** For the copies as they are with these changes. Where it is more than `limit`, it may be less than the sum by no matter how much. */
  leastAfter(changes: readonly CopyChange[], limit: number): number;
  /** Notes the copies as they are, for `undo`. */
  keep(): void;
  /** Back to the copies of the last `keep`. */
  undo(): void;
}

/** Rounding adds up from change to change: after so many that were kept, all is reckoned anew. */
const MAX_CHANGES_KEPT = 1000;

/**
 * Works out least sums of run lengths for a number of forms.
 *
 * The question is turned about: a price is looked for that each piece may bear, such that no form yields more than the
 * price of one sheet, and the order bears most in all. That is as much as the least sum of run lengths. From prices of
 * nothing it goes up step by step, so that there is always an answer to go on from. A few copies more or less change a
 * few prices only, so it goes on from those before.
 *
 * @source the simplex method, on the dual program; from memory.
 */
export function createRunLengths(quantities: readonly number[], forms: number): RunLengths {
  const designs = quantities.length;
  const table = createTableau(forms, designs);
  const now = new Int32Array(forms * designs);
  const kept = now.slice();
  let keptChanges = 0;
  const reckon = (limit: number) => {
    table.begin(
      (form, design) => now[form * designs + design] ?? 0,
      (design) => quantities[design] ?? 0,
    );
    return table.climb(limit);
  };
  return {
    least(copies) {
      now.set(copies);
      return reckon(Number.POSITIVE_INFINITY);
    },
    leastAfter(changes, limit) {
      for (const { form, design, by } of changes) {
        const at = form * designs + design;
        now[at] = (now[at] ?? 0) + by;
        table.change(form, design, by);
      }
      const goesOn = changes.every(({ design }) => table.mend(design)) && table.descend();
      return goesOn ? table.climb(limit) : reckon(limit);
    },
    keep() {
      keptChanges++;
      if (keptChanges % MAX_CHANGES_KEPT === 0) reckon(Number.POSITIVE_INFINITY);
      kept.set(now);
      table.keep();
    },
    undo() {
      now.set(kept);
      table.undo();
    },
  };
}
