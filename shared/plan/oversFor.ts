// The overs of a run by its length, from the library or, where that says nothing, from the brief.
import type { Overs } from '../layout/count.ts';
import type { OversFrom } from '../library/library.ts';

/** What the overs of a run of so many good sheets are reckoned by. */
export function oversByLength(needed: number, table: readonly OversFrom[], ofBrief: Overs): Overs {
  const entry = table.findLast(({ from }) => from <= needed) ?? table[0];
  return entry === undefined ? ofBrief : { percent: entry.percent, least: entry.least };
}
