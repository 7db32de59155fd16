// How long the forms of a gang run must run, as an integer program.
import { copiesOf, type GangForm, type GangOrder } from './gang.ts';
import { NO_BOUND, type Program } from './program.ts';

/**
 * How long each form must run, its copies given: the fewest sheets that make the order.
 */
export function runsProgram(order: GangOrder, forms: readonly Pick<GangForm, 'copies'>[]): Program {
  return {
    columns: forms.map(() => ({ cost: 1, least: 0, most: NO_BOUND, whole: true })),
    rows: order.quantities.map((wanted, design) => ({
      least: wanted,
      most: NO_BOUND,
      entries: forms.flatMap((form, column) => {
        const times = copiesOf(form, design);
        return times === 0 ? [] : [{ column, times }];
      }),
    })),
  };
}

/** The forms with the runs that were found; a form that is not printed is left out. */
export function readRuns(
  forms: readonly Pick<GangForm, 'copies'>[],
  values: readonly number[],
): readonly GangForm[] {
  return forms
    .map(({ copies }, f) => ({ copies, sheets: Math.round(values[f] ?? 0) }))
    .filter((form) => form.sheets > 0);
}
