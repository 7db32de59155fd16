// The gang run as one integer program over every way to fill a form.
import { type GangForm, type GangOrder, sum } from './gang.ts';
import { NO_BOUND, type Program } from './program.ts';
import { readRuns } from './runsProgram.ts';

/** Copies of each design on a form. */
type Filling = readonly number[];

/**
 * The whole question at once: for every way to fill a form, whether it is used and how long it runs. Small enough for a
 * few designs only: 70 ways for five designs on four places, 1365 for twelve. Runs may be broken numbers of sheets: no
 * plan costs less, and one of whole sheets costs at most a sheet for every form more.
 * `counts` says how many forms
 * can be worth having, and `below` what the plan must cost at most: where nothing does, the plan that is known is the best.
 */
export function fillingsProgram(
  { quantities, sheetCost, formCost, slots }: GangOrder,
  fillings: readonly Filling[],
  counts: { readonly least: number; readonly most: number },
  below: number,
): Program {
  const longest = fillings.map((copies) =>
    Math.max(...copies.map((count, d) => (count === 0 ? 0 : Math.ceil((quantities[d] ?? 0) / count)))),
  );
  const runs = (filling: number) => fillings.length + filling;
  return {
    columns: [
      ...fillings.map(() => ({ cost: formCost, least: 0, most: 1, whole: true })),
      ...longest.map((most) => ({ cost: sheetCost, least: 0, most, whole: false })),
    ],
    rows: [
      ...quantities.map((wanted, design) => ({
        least: wanted,
        most: NO_BOUND,
        entries: fillings.flatMap((copies, f) => {
          const times = copies[design] ?? 0;
          return times === 0 ? [] : [{ column: runs(f), times }];
        }),
      })),
      // A design needs a form that has it.
      ...quantities.map((_, design) => ({
        least: 1,
        most: NO_BOUND,
        entries: fillings.flatMap((copies, f) =>
          (copies[design] ?? 0) === 0 ? [] : [{ column: f, times: 1 }],
        ),
      })),
      // A form that is not used does not run.
      ...fillings.map((_, f) => ({
        least: 0,
        most: NO_BOUND,
        entries: [
          { column: f, times: longest[f] ?? 0 },
          { column: runs(f), times: -1 },
        ],
      })),
      {
        ...counts,
        entries: fillings.map((__, f) => ({ column: f, times: 1 })),
      },
      {
        least: 0,
        most: below,
        entries: fillings.flatMap((_, f) => [
          { column: f, times: formCost },
          { column: runs(f), times: sheetCost },
        ]),
      },
      // Every place of every sheet makes one piece at most.
      {
        least: Math.ceil(sum(quantities) / slots),
        most: NO_BOUND,
        entries: fillings.map((__, f) => ({ column: runs(f), times: 1 })),
      },
    ],
  };
}

/** The forms that a solution of `fillingsProgram` stands for. */
export function readFillings(fillings: readonly Filling[], values: readonly number[]): readonly GangForm[] {
  return readRuns(
    fillings.map((copies) => ({ copies })),
    values.slice(fillings.length),
  );
}

/** Every way to fill all places of a form; more copies than needed do no harm. `undefined` where there are too many. */
export function fillingsOf({ quantities, slots }: GangOrder, most: number): readonly Filling[] | undefined {
  if (countFillings(quantities.length, slots) > most) return undefined;
  const fill = (designs: number, places: number): Filling[] => {
    if (designs === 1) return [[places]];
    return Array.from({ length: places + 1 }, (_, first) => first).flatMap((first) =>
      fill(designs - 1, places - first).map((rest) => [first, ...rest]),
    );
  };
  return fill(quantities.length, slots);
}

/** Combinations with repetition: so many designs, drawn once for every place. */
function countFillings(designs: number, slots: number): number {
  let count = 1;
  for (let k = 1; k < designs; k++) count = (count * (slots + k)) / k;
  return count;
}
