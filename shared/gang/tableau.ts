// A linear program in a table, solved by the simplex method: from the beginning, or on from a solution that was changed.

/** Numbers smaller than this are rounding: prices are of the size of 1. */
const ROUNDING = 1e-9;
/** Nothing is divided by numbers smaller than this. */
const MIN_PIVOT = 1e-6;
/** So many pivots for each row bring changed columns back to a solution; else it is begun anew. */
const MAX_PIVOTS_PER_ROW = 3;

/** The program `most gain·y with A y <= 1 and y >= 0`: columns of A given by cells, then one for what is left of each row. */
export interface Tableau {
  /** Begins anew: `cellOf` gives A, `gainOf` what a column brings. */
  begin(cellOf: (row: number, column: number) => number, gainOf: (column: number) => number): void;
  /** Adds so much to a cell of A. All changed columns then go to `mend`. */
  change(row: number, column: number, by: number): void;
  /** Makes the table a solution again after a column was changed. False where it must be begun anew. */
  mend(column: number): boolean;
  /** Takes back until every row is kept to. False where it must be begun anew. */
  descend(): boolean;
  /** The most that can be gained, or more than `limit` as soon as that is sure. Every row must be kept to. */
  climb(limit: number): number;
  /** Notes how the table stands, for `undo`. */
  keep(): void;
  /** Back to how the table stood at the last `keep`. */
  undo(): void;
}

/** @source the primal and the dual simplex method; from memory. */
export function createTableau(rows: number, columns: number): Tableau {
  /** The columns, what is left of each row, and the right-hand side; the last row tells what each column would gain. */
  const width = columns + rows + 1;
  const right = width - 1;
  const gains = rows * width;
  const table = new Float64Array((rows + 1) * width);
  /** The column that each row stands for, and the row of each column or -1. */
  const columnOf = new Int32Array(rows);
  const rowOf = new Int32Array(width);
  const kept = { table: table.slice(), columnOf: columnOf.slice(), rowOf: rowOf.slice() };
  const at = (row: number, column: number) => table[row * width + column] ?? 0;

  const pivot = (row: number, column: number) => {
    const from = row * width;
    const by = table[from + column] ?? 1;
    for (let c = 0; c < width; c++) table[from + c] = (table[from + c] ?? 0) / by;
    for (let other = 0; other <= gains; other += width) {
      const times = table[other + column] ?? 0;
      if (other === from || times === 0) continue;
      for (let c = 0; c < width; c++) {
        table[other + c] = (table[other + c] ?? 0) - times * (table[from + c] ?? 0);
      }
    }
    rowOf[columnOf[row] ?? 0] = -1;
    columnOf[row] = column;
    rowOf[column] = row;
  };

  /** What brings the most; towards the end the first that brings anything, which cannot go round in circles. */
  const entering = (careful: boolean): number => {
    let found = -1;
    let most = ROUNDING;
    for (let column = 0; column < right; column++) {
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
    for (let row = 0; row < rows; row++) {
      const by = at(row, column);
      if (by <= ROUNDING) continue;
      const reach = at(row, right) / by;
      if (reach < least) {
        least = reach;
        found = row;
      }
    }
    return found;
  };

  /** The column that enters at a row for the least loss, `usable` saying which of its cells will do. */
  const cheapest = (row: number, usable: (cell: number, column: number) => boolean): number => {
    let found = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let column = 0; column < right; column++) {
      const cell = at(row, column);
      if (!usable(cell, column)) continue;
      const loss = Math.abs(Math.min(0, at(rows, column)) / cell);
      if (loss < least) {
        least = loss;
        found = column;
      }
    }
    return found;
  };

  const mostBroken = (): number => {
    let found = -1;
    let most = -ROUNDING;
    for (let row = 0; row < rows; row++) {
      const left = at(row, right);
      if (left >= most) continue;
      most = left;
      found = row;
    }
    return found;
  };

  return {
    begin(cellOf, gainOf) {
      table.fill(0);
      rowOf.fill(-1);
      for (let row = 0; row < rows; row++) {
        for (let column = 0; column < columns; column++) table[row * width + column] = cellOf(row, column);
        table[row * width + columns + row] = 1;
        table[row * width + right] = 1;
        columnOf[row] = columns + row;
        rowOf[columns + row] = row;
      }
      for (let column = 0; column < columns; column++) table[gains + column] = gainOf(column);
    },
    change(row, column, by) {
      // The columns of what is left hold the inverse of the basis.
      for (let start = 0; start <= gains; start += width) {
        table[start + column] = (table[start + column] ?? 0) + by * (table[start + columns + row] ?? 0);
      }
    },
    mend(column) {
      const row = rowOf[column] ?? -1;
      if (row < 0) return true;
      const stays = Math.abs(at(row, column)) > MIN_PIVOT;
      const enters = stays
        ? column
        : cheapest(row, (cell, other) => Math.abs(cell) > MIN_PIVOT && (rowOf[other] ?? -1) < 0);
      if (enters < 0) return false;
      pivot(row, enters);
      return true;
    },
    descend() {
      for (let step = 0; step <= MAX_PIVOTS_PER_ROW * rows; step++) {
        const row = mostBroken();
        if (row < 0) return true;
        const column = cheapest(row, (cell) => cell < -ROUNDING);
        if (column < 0) return false;
        pivot(row, column);
      }
      return false;
    },
    climb(limit) {
      for (let step = 0; ; step++) {
        const gained = -at(rows, right);
        if (gained > limit) return gained;
        const column = entering(step > 4 * width);
        if (column < 0) return gained;
        const row = leaving(column);
        if (row < 0) return Number.POSITIVE_INFINITY;
        pivot(row, column);
      }
    },
    keep() {
      kept.table.set(table);
      kept.columnOf.set(columnOf);
      kept.rowOf.set(rowOf);
    },
    undo() {
      table.set(kept.table);
      columnOf.set(kept.columnOf);
      rowOf.set(kept.rowOf);
    },
  };
}
