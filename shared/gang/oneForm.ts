// A gang run on one form: the copies that need the fewest sheets.
import { fewestSheets } from '../layout/guillotine/fewestSheets.ts';
import { type GangForm, sum } from './gang.ts';

/** The best form for these numbers of pieces, or `undefined` where it has fewer places than there are designs. */
export function bestOfOne(quantities: readonly number[], slots: number): GangForm | undefined {
  const found = fewestSheets<undefined>(quantities, (copies) =>
    sum(copies) <= slots ? { layOut: () => undefined } : 'cannot',
  );
  return typeof found === 'string' ? undefined : { copies: found.copies, sheets: found.sheets };
}
