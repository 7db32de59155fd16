// Which candidates come first, and which are beaten by none.
import type { PlanCandidate } from './candidate.ts';

/** What candidates are ranked by. */
export const RANKINGS = ['cost', 'time', 'waste'] as const;
export type Ranking = (typeof RANKINGS)[number];

/** Money, seconds, and square metres of paper. */
export type Counts = Pick<PlanCandidate, 'id' | 'cost' | 'time' | 'area'>;

/** Seconds and areas (m2) that differ by less are the same: float64 adds them up in different orders. */
const SAME_VALUE = 1e-8;
const rounded = (value: number) => Math.round(value / SAME_VALUE);

const VALUES: Readonly<Record<Ranking, (one: Counts) => number>> = {
  cost: ({ cost }) => Math.round(cost.total * 100),
  time: ({ time }) => rounded(time.total),
  waste: ({ area }) => rounded(area.waste),
};

/** The candidates, the best first; where they are equal in this, the others decide. */
export function rank<T extends Counts>(candidates: readonly T[], by: Ranking): readonly T[] {
  const order = [by, ...RANKINGS.filter((other) => other !== by)].map((ranking) => VALUES[ranking]);
  return candidates
    .map((candidate) => ({ candidate, values: order.map((value) => value(candidate)) }))
    .toSorted((a, b) => firstDifference(a.values, b.values))
    .map(({ candidate }) => candidate);
}

/** The ids of those that no other is as good as in cost, time and waste, and better than in one of them. */
export function unbeaten(candidates: readonly Counts[]): ReadonlySet<string> {
  const all = candidates
    .map((one) => ({ id: one.id, values: RANKINGS.map((ranking) => VALUES[ranking](one)) }))
    .toSorted((a, b) => firstDifference(a.values, b.values));
  // Whatever beats a candidate comes before it, and so does one that nothing beats.
  const front: typeof all = [];
  for (const one of all) {
    if (!front.some((other) => beats(other.values, one.values))) front.push(one);
  }
  return new Set(front.map(({ id }) => id));
}

function firstDifference(one: readonly number[], other: readonly number[]): number {
  return one.map((value, i) => value - (other[i] as number)).find((difference) => difference !== 0) ?? 0;
}

function beats(one: readonly number[], other: readonly number[]): boolean {
  return one.every((value, i) => value <= (other[i] as number)) && firstDifference(one, other) !== 0;
}
