// The gang run benchmark: the published orders, what they cost planned here, and how far that may be from the best.
import { readFileSync } from 'node:fs';
import { solveGang } from '../../electron/gang/solveGang.ts';
import type { GangOrder } from '../../shared/gang/gang.ts';

/** Seconds for each order. */
const SECONDS = 30;

interface Published {
  readonly cover_printing: readonly {
    readonly name: string;
    readonly demand: readonly number[];
    readonly slots_per_sheet: number;
    readonly cost_per_impression: number;
    readonly cost_per_form: number;
    readonly best_known: { readonly cost_listed: number };
  }[];
  readonly template_design: readonly {
    readonly name: string;
    readonly demand: readonly number[];
    readonly slots: number;
    readonly optimal: Readonly<Record<string, number>>;
  }[];
}

/** Plans every published order; the sources stand in the file. */
export async function benchGang(): Promise<void> {
  const file = new URL('../../tests/reference/gang.json', import.meta.url);
  const { cover_printing, template_design }: Published = JSON.parse(readFileSync(file, 'utf8'));
  console.log(
    `Gang runs, ${SECONDS} s each at most: order | designs | best published | here | against it | gap | time`,
  );
  for (const one of cover_printing) {
    const order = {
      quantities: one.demand,
      slots: one.slots_per_sheet,
      sheetCost: one.cost_per_impression,
      formCost: one.cost_per_form,
    };
    await benchOrder(one.name, order, one.best_known.cost_listed);
  }
  for (const one of template_design) {
    for (const [forms, best] of Object.entries(one.optimal)) {
      const order = {
        quantities: one.demand,
        slots: one.slots,
        sheetCost: 1,
        formCost: 0,
        mostForms: Number(forms),
      };
      await benchOrder(`${one.name} on ${forms}`, order, best);
    }
  }
}

async function benchOrder(name: string, order: GangOrder, best: number): Promise<void> {
  const start = performance.now();
  const planned = await solveGang(order, { seconds: SECONDS });
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  if (!planned.ok) throw new Error(planned.fault.message);
  const { plan, gap } = planned.value;
  const percent = (share: number) => `${(100 * share).toFixed(2)} %`;
  console.log(
    `${name} | ${order.quantities.length} | ${best} | ${plan.cost.toFixed(2)} | ${percent(plan.cost / best - 1)} | ${percent(gap)} | ${seconds} s`,
  );
}
