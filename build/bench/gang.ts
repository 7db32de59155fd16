// The gang run benchmark: the published orders, what they cost planned here, and how far that may be from the best.
import { solveGang } from '../../electron/gang/solveGang.ts';
import type { GangOrder } from '../../shared/gang/gang.ts';
import { publishedGangs } from '../../tests/kit/gangOrders.ts';

/** Seconds for each order. */
const SECONDS = 30;

/** Plans every published order; the sources stand in the file. */
export async function benchGang(): Promise<void> {
  console.log(
    `Gang runs, ${SECONDS} s each at most: order | designs | best published | here | against it | gap | time`,
  );
  for (const { name, order, best } of publishedGangs()) await benchOrder(name, order, best);
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
