// The gang run as an integer program over runs of given lengths, and its solution read back as forms.
import { copiesOf, type GangForm, type GangOrder, sum } from './gang.ts';
import { type Column, NO_BOUND, type Program, type Row } from './program.ts';

/**
 * Which forms and how many copies on each, out of runs of given lengths. Forms of one length are taken together: first
 * the number of forms of each length, then, length by length, the copies of each design on all of them.
 *
 * It holds the best plan of all if the lengths of its runs are among those given.
 */
export function lengthsProgram(order: GangOrder, lengths: readonly number[]): Program {
  const { quantities, slots, sheetCost, formCost } = order;
  const most = order.mostForms ?? quantities.length;
  const copies = (length: number, design: number) => lengths.length + length * quantities.length + design;
  const columns: Column[] = lengths.map((length) => ({
    cost: formCost + sheetCost * length,
    least: 0,
    most,
    whole: true,
  }));
  for (const length of lengths) {
    for (const wanted of quantities) {
      columns.push({ cost: 0, least: 0, most: Math.ceil(wanted / length), whole: true });
    }
  }
  const enough: Row[] = quantities.map((wanted, design) => ({
    least: wanted,
    most: NO_BOUND,
    entries: lengths.map((length, l) => ({ column: copies(l, design), times: length })),
  }));
  const places: Row[] = lengths.map((_, l) => ({
    least: 0,
    most: NO_BOUND,
    entries: [
      { column: l, times: slots },
      ...quantities.map((__, design) => ({ column: copies(l, design), times: -1 })),
    ],
  }));
  const forms: Row = {
    least: Math.ceil(quantities.length / slots),
    most,
    entries: lengths.map((_, column) => ({ column, times: 1 })),
  };
  return { columns, rows: [...enough, ...places, forms] };
}

/** The columns of `lengthsProgram` that stand for these forms, whose lengths are among those given. */
export function writeLengths(
  order: GangOrder,
  lengths: readonly number[],
  forms: readonly GangForm[],
): readonly number[] {
  const ofLength = lengths.map((length) => forms.filter((form) => form.sheets === length));
  return [
    ...ofLength.map((alike) => alike.length),
    ...ofLength.flatMap((alike) =>
      order.quantities.map((wanted, design) =>
        Math.min(
          sum(alike.map((form) => copiesOf(form, design))),
          Math.ceil(wanted / (alike[0]?.sheets ?? wanted)),
        ),
      ),
    ),
  ];
}

/** The forms that a solution of `lengthsProgram` stands for: the copies of a length fill its forms one after another. */
export function readLengths(
  order: GangOrder,
  lengths: readonly number[],
  values: readonly number[],
): readonly GangForm[] {
  const { quantities, slots } = order;
  return lengths.flatMap((length, l) => {
    const count = Math.round(values[l] ?? 0);
    const places = quantities.flatMap((_, design) => {
      const copies = Math.round(values[lengths.length + l * quantities.length + design] ?? 0);
      return Array<number>(copies).fill(design);
    });
    return Array.from({ length: count }, (_, f) => {
      const here = places.slice(f * slots, (f + 1) * slots);
      return { copies: quantities.map((__, d) => here.filter((p) => p === d).length), sheets: length };
    });
  });
}

/**
 * Lengths of runs that may do better than those of a plan: such as make one design alone, or what is left of one after
 * other runs. Those of the plan come first.
 */
export function lengthsWorthTrying(
  { quantities, slots }: GangOrder,
  forms: readonly GangForm[],
): readonly number[] {
  const runs = forms.map((form) => form.sheets);
  const few = [1, 2, 3].filter((copies) => copies <= slots);
  const alone = quantities.flatMap((wanted) =>
    Array.from({ length: slots }, (_, copies) => Math.ceil(wanted / (copies + 1))),
  );
  const rests = quantities.flatMap((wanted) =>
    runs.flatMap((run) =>
      few.flatMap((made) => few.map((copies) => Math.ceil((wanted - made * run) / copies))),
    ),
  );
  return [...new Set([...runs, ...alone, ...rests])].filter((length) => length > 0);
}
