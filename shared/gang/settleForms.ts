// Forms as the layout lays them: no copy and no sheet more than what is printed from them needs.
import type { GangForm, GangOrder } from './gang.ts';
import { bestOfOne } from './oneForm.ts';

/**
 * Every form with the fewest sheets that print as much of each design, and on it the fewest copies that do; a design that
 * is alone fills its form. That is how one brief is laid out, so each form becomes one.
 */
export function settleForms({ slots }: GangOrder, forms: readonly GangForm[]): readonly GangForm[] {
  return forms.map(({ copies, sheets }) => {
    const designs = copies.flatMap((count, design) => (count > 0 ? [{ design, made: count * sheets }] : []));
    const form = bestOfOne(
      designs.map(({ made }) => made),
      slots,
    );
    if (form === undefined) throw new Error('A form has places for what lies on it');
    const [only, another] = designs;
    const settled = copies.map(() => 0);
    designs.forEach(({ design }, place) => {
      settled[design] = form.copies[place] ?? 0;
    });
    if (only !== undefined && another === undefined) settled[only.design] = slots;
    return { copies: settled, sheets: form.sheets };
  });
}
