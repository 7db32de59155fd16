// The fewest sheets that an order takes when every design shares every sheet.

/** An answer to whether so many copies of each design fit one sheet: how, that they cannot, or that it is not known. */
export type Fit<T> = { readonly layOut: () => T } | 'cannot' | 'unknown';

/** The sheets that an order takes and what lies on each of them. */
export interface Sheets<T> {
  readonly sheets: number;
  readonly copies: readonly number[];
  readonly layOut: () => T;
  /** Whether fewer sheets surely do not do. */
  readonly proven: boolean;
}

/**
 * The least number of sheets whose copies fit, each design with no more copies than that number of sheets needs: any
 * more would only be left over. More sheets never need more copies, so the number is found by halving; where a fit is
 * not known it is taken not to be.
 *
 * Quantities >= 1. Answers with what `fits` says of one copy of each where even these do not fit.
 */
export function fewestSheets<T>(
  quantities: readonly number[],
  fits: (copies: readonly number[]) => Fit<T>,
): Sheets<T> | 'cannot' | 'unknown' {
  const copiesFor = (sheets: number) => quantities.map((quantity) => Math.ceil(quantity / sheets));
  let enough = Math.max(...quantities);
  let copies = copiesFor(enough);
  const first = fits(copies);
  if (first === 'cannot' || first === 'unknown') return first;
  let fit = first;
  let tooFew = 0;
  let surelyTooFew = 0;
  while (enough - tooFew > 1) {
    const between = Math.floor((tooFew + enough) / 2);
    const tried = copiesFor(between);
    const answer = fits(tried);
    if (answer === 'cannot' || answer === 'unknown') {
      tooFew = lastWithSameCopies(quantities, tried);
      if (answer === 'cannot') surelyTooFew = tooFew;
    } else {
      fit = answer;
      copies = tried;
      enough = Math.max(...quantities.map((quantity, k) => Math.ceil(quantity / (tried[k] as number))));
    }
  }
  return { sheets: enough, copies, layOut: fit.layOut, proven: surelyTooFew === enough - 1 };
}

/** The largest number of sheets that still needs all these copies; a single copy is needed however many sheets there are. */
function lastWithSameCopies(quantities: readonly number[], copies: readonly number[]): number {
  return Math.min(
    ...quantities.map((quantity, k) => {
      const fewer = (copies[k] as number) - 1;
      return fewer === 0 ? Number.POSITIVE_INFINITY : Math.floor((quantity - 1) / fewer);
    }),
  );
}
