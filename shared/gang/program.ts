// An integer program as a plain value: what a solver is given, and what it gives back.

/** For a row or a column that may be as large as it likes. */
export const NO_BOUND = Number.POSITIVE_INFINITY;

/** Whole or broken numbers, between two bounds, each with a cost. */
export interface Column {
  readonly cost: number;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
}

/** A weighed sum of columns that must lie between two bounds. */
export interface Row {
  readonly least: number;
  readonly most: number;
  readonly entries: readonly { readonly column: number; readonly times: number }[];
}

/** The least cost within all rows is looked for. */
export interface Program {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** What a solver found: the values of the best solution, if it found any, and what no solution can be below. */
export interface Solved {
  readonly values: readonly number[] | undefined;
  readonly bound: number;
  /** Whether the solution is the best, or there is none. */
  readonly proven: boolean;
}
