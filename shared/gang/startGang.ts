// A gang run to begin with: designs of like numbers share a form, each design on one form only.
import { mostForms } from './bounds.ts';
import { type GangForm, type GangOrder, type GangPlan, weighGang } from './gang.ts';
import { bestOfOne } from './oneForm.ts';

/**
 * The best plan in which the designs, in order of their numbers, are divided into neighbours that share a form.
 * `undefined` where the order cannot be made at all: more designs than all its forms have places.
 */
export function startGang(order: GangOrder): GangPlan | undefined {
  const { quantities, slots } = order;
  const most = mostForms(order);
  const sorted = quantities
    .map((wanted, design) => ({ wanted, design }))
    .toSorted((a, b) => b.wanted - a.wanted);
  /** The cheapest forms for the first so many designs, by the number of forms. */
  let before: (Reached | undefined)[] = [{ cost: 0, forms: [] }];
  let best: Reached | undefined;
  for (let count = 1; count <= most; count++) {
    const now: (Reached | undefined)[] = [];
    for (let upTo = count; upTo <= sorted.length; upTo++) {
      for (let from = Math.max(0, upTo - slots); from < upTo; from++) {
        const reached = before[from];
        if (reached === undefined) continue;
        const form = formFor(sorted.slice(from, upTo), order);
        const cost = reached.cost + order.formCost + order.sheetCost * form.sheets;
        if (cost < (now[upTo]?.cost ?? Number.POSITIVE_INFINITY)) {
          now[upTo] = { cost, forms: [...reached.forms, form] };
        }
      }
    }
    const whole = now[sorted.length];
    if (whole !== undefined && whole.cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = whole;
    before = now;
  }
  return best && weighGang(order, best.forms);
}

interface Reached {
  readonly cost: number;
  readonly forms: readonly GangForm[];
}

/** One form for these designs, no more of them than it has places. */
function formFor(
  group: readonly { readonly wanted: number; readonly design: number }[],
  { quantities, slots }: GangOrder,
): GangForm {
  const form = bestOfOne(
    group.map(({ wanted }) => wanted),
    slots,
  );
  if (form === undefined) throw new Error('A form has a place for every design of its group');
  const copies = quantities.map(() => 0);
  group.forEach(({ design }, place) => {
    copies[design] = form.copies[place] ?? 0;
  });
  return { copies, sheets: form.sheets };
}
