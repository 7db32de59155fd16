// How long the forms of a gang run must run, their copies given: fast enough to try many thousands of copies.

/** Gives the least sum of run lengths for copies (`copies[form * designs + design]`); infinite where a design is on no form. */
export type LeastRuns = (copies: Int32Array) => number;

/** Numbers smaller than this are rounding: prices are of the size of 1. */
const ROUNDING = 1e-9;

/**
 * Works out least sums of run lengths for a number of forms, not yet rounded to whole sheets.
 *
 * The question is turned about: a price is looked for that each piece may bear, such that no form yields more than the
 * price of one sheet, and the order bears most in all. That is as much as the least sum of run lengths. From prices of
 * nothing it goes up step by step, so that there is always an answer to go on from.
 *
 * @source the simplex method, on the dual program; from memory.
 */
export function leastRunsFor(quantities: readonly number[], forms: number): LeastRuns {
  const designs = quantities.length;
  /** Designs, then what is left of each form's sheet, then the right-hand side. */
  const width = designs + forms + 1;
  const table = new Float64Array((forms + 1) * width);
  const gains = forms * width;

  const begin = (copies: Int32Array) => {
    table.fill(0);
    for (let form = 0; form < forms; form++) {
      const row = form * width;
      for (let design = 0; design < designs; design++) {
        table[row + design] = copies[form * designs + design] ?? 0;
      }
      table[row + designs + form] = 1;
      table[row + width - 1] = 1;
    }
    for (let design = 0; design < designs; design++) table[gains + design] = quantities[design] ?? 0;
  };

  /** What brings the most; towards the end the first that brings anything, which cannot go round in circles. */
  const entering = (careful: boolean): number => {
    let found = -1;
    let most = ROUNDING;
    for (let column = 0; column < width - 1; column++) {
      const gain = table[gains + column] ?? 0;
      if (gain <= most) continue;
      found = column;
      if (careful) break;
      most = gain;
    }
    return found;
  };

  const leaving = (column: number): number => {
    let found = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let form = 0; form < forms; form++) {
      const by = table[form * width + column] ?? 0;
      if (by <= ROUNDING) continue;
      const reach = (table[form * width + width - 1] ?? 0) / by;
      if (reach < least) {
        least = reach;
        found = form;
      }
    }
    return found;
  };

  const pivot = (form: number, column: number) => {
    const from = form * width;
    const by = table[from + column] ?? 1;
    for (let c = 0; c < width; c++) table[from + c] = (table[from + c] ?? 0) / by;
    for (let row = 0; row <= gains; row += width) {
      const times = table[row + column] ?? 0;
      if (row === from || times === 0) continue;
      for (let c = 0; c < width; c++) table[row + c] = (table[row + c] ?? 0) - times * (table[from + c] ?? 0);
    }
  };

  return (copies) => {
    begin(copies);
    const quick = 4 * width;
    for (let step = 0; ; step++) {
      const column = entering(step > quick);
      if (column < 0) return -(table[gains + width - 1] ?? 0);
      const form = leaving(column);
      if (form < 0) return Number.POSITIVE_INFINITY;
      pivot(form, column);
    }
  };
}
