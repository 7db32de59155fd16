// Solving integer programs with HiGHS, as a WebAssembly library.
import { createRequire } from 'node:module';
import loadHighs, { type Highs } from 'highs';
import type { Program, Solved } from '../../shared/gang/program.ts';

const require = createRequire(import.meta.url);

/** How long a program may be worked on, and what is known of it already. */
export interface SolverEffort {
  readonly seconds: number;
  /** A solution to begin with. */
  readonly start?: readonly number[];
}

let loading: Promise<Highs> | undefined;

/** Solves programs one after the other; each call holds its thread until it is done or its time is over. */
export async function openSolver(): Promise<(program: Program, effort: SolverEffort) => Solved> {
  loading ??= loadHighs({ locateFile: () => require.resolve('highs/runtime') });
  const highs = await loading;
  return (program, effort) => solve(highs, program, effort);
}

function solve(highs: Highs, { columns, rows }: Program, { seconds, start }: SolverEffort): Solved {
  const { modelStatus, variableType } = highs.constants;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { entries } of rows) {
    for (const { column, times } of entries) {
      indices.push(column);
      values.push(times);
    }
    starts.push(indices.length);
  }
  const model = highs.createModel();
  try {
    model.options.set({
      output_flag: false,
      time_limit: seconds,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
    });
    model.passModel({
      numCols: columns.length,
      numRows: rows.length,
      colCost: columns.map((c) => c.cost),
      colLower: columns.map((c) => c.least),
      colUpper: columns.map((c) => c.most),
      rowLower: rows.map((r) => r.least),
      rowUpper: rows.map((r) => r.most),
      integrality: columns.map((c) => (c.whole ? variableType.integer : variableType.continuous)),
      matrix: {
        format: 'csr',
        numRows: rows.length,
        numCols: columns.length,
        starts,
        indices,
        values,
      },
    });
    if (start !== undefined) model.setSolution({ colValue: start });
    model.run();
    const status = model.getModelStatus();
    const found = model.info.get('primal_solution_status') === 2;
    return {
      values: found ? [...model.getSolution().colValue] : undefined,
      bound: Number(model.info.get('mip_dual_bound')),
      proven: status === modelStatus.optimal || status === modelStatus.infeasible,
    };
  } finally {
    model.dispose();
  }
}
