// Gang orders for tests: the published ones, and the cheapest plan of small ones found by trying all.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { GangOrder } from '../../shared/gang/gang.ts';

interface Published {
  readonly name: string;
  readonly order: GangOrder;
  /** The best cost known: published, or computed by another method where tests/reference/gang.json says so. */
  readonly best: number;
}

interface Written {
  readonly cover_printing: readonly {
    readonly name: string;
    readonly demand: readonly number[];
    readonly slots_per_sheet: number;
    readonly cost_per_impression: number;
    readonly cost_per_form: number;
    readonly best_known_cost: number;
  }[];
  readonly template_design: readonly {
    readonly name: string;
    readonly demand: readonly number[];
    readonly slots: number;
    readonly optimal: Readonly<Record<string, number>>;
  }[];
}

/**
 * The published orders, with the cost of sheets and forms, or with so many forms and only the sheets counted.
 *
 * @source tests/reference/gang.json: the cover printing instances of Romero and Alonso-Pecina, and template design by Proll
 * and Smith 1998 (CSPLib problem 2). The optima of the magazine inserts are computed by another method.
 */
export function publishedGangs(): readonly Published[] {
  const path = join(import.meta.dirname, '../reference/gang.json');
  const written = JSON.parse(readFileSync(path, 'utf8')) as Written;
  return [
    ...written.cover_printing.map((one) => ({
      name: one.name,
      order: {
        quantities: one.demand,
        slots: one.slots_per_sheet,
        sheetCost: one.cost_per_impression,
        formCost: one.cost_per_form,
      },
      best: one.best_known_cost,
    })),
    ...written.template_design.flatMap((one) =>
      Object.entries(one.optimal).map(([forms, best]) => ({
        name: `${one.name}, ${forms} ${forms === '1' ? 'form' : 'forms'}`,
        order: {
          quantities: one.demand,
          slots: one.slots,
          sheetCost: 1,
          formCost: 0,
          mostForms: Number(forms),
        },
        best,
      })),
    ),
  ];
}

export function publishedGang(name: string): Published {
  const found = publishedGangs().find((one) => one.name === name);
  if (found === undefined) throw new Error(`No gang order ${name} was published`);
  return found;
}

/** The least cost of a small order, by trying every set of full forms and every number of sheets. */
export function cheapestByTrying(order: GangOrder): number {
  const { quantities, slots, sheetCost, formCost } = order;
  const forms = fillings(quantities.length, slots);
  const enough = Math.max(...quantities) * quantities.length;
  let best = Number.POSITIVE_INFINITY;
  const tryMore = (from: number, left: readonly number[], cost: number, count: number): void => {
    if (cost >= best) return;
    if (left.every((wanted) => wanted <= 0)) {
      best = cost;
      return;
    }
    if (count === (order.mostForms ?? quantities.length)) return;
    for (let f = from; f < forms.length; f++) {
      const copies = forms[f] ?? [];
      for (let sheets = 1; sheets <= enough; sheets++) {
        const next = cost + formCost + sheetCost * sheets;
        if (next >= best) break;
        tryMore(
          f + 1,
          left.map((wanted, d) => wanted - sheets * (copies[d] ?? 0)),
          next,
          count + 1,
        );
      }
    }
  };
  tryMore(0, quantities, 0, 0);
  return best;
}

function fillings(designs: number, places: number): readonly (readonly number[])[] {
  if (designs === 1) return [[places]];
  return Array.from({ length: places + 1 }, (_, first) =>
    fillings(designs - 1, places - first).map((rest) => [first, ...rest]),
  ).flat();
}
