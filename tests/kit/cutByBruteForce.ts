// The guillotine optimum by trying every cut at every whole unit: slow, plain, and made unlike the program's own search.

export interface Kind {
  readonly w: number;
  readonly h: number;
  readonly value: number;
  /** How many copies there are. */
  readonly copies: number;
  readonly turns: boolean;
}

/**
 * Every way in which copies can come out of a whole-unit region: all count vectors that some sequence of edge-to-edge cuts
 * reaches, as texts. For regions of a few units and a few copies only.
 */
export function reachable(
  w: number,
  h: number,
  kinds: readonly Kind[],
  known = new Map<string, Set<string>>(),
): Set<string> {
  const key = `${w}x${h}`;
  const cached = known.get(key);
  if (cached !== undefined) return cached;
  const found = new Set<string>([kinds.map(() => 0).join(',')]);
  kinds.forEach((kind, k) => {
    const fits = (kind.w <= w && kind.h <= h) || (kind.turns && kind.h <= w && kind.w <= h);
    if (fits && kind.copies > 0) found.add(kinds.map((_k, i) => (i === k ? 1 : 0)).join(','));
  });
  const join = (one: Set<string>, other: Set<string>) => {
    for (const a of one) {
      for (const b of other) {
        const sum = a.split(',').map((n, i) => Number(n) + Number(b.split(',')[i]));
        if (sum.every((n, i) => n <= kinds[i]!.copies)) found.add(sum.join(','));
      }
    }
  };
  for (let at = 1; at <= w / 2; at++)
    join(reachable(at, h, kinds, known), reachable(w - at, h, kinds, known));
  for (let at = 1; at <= h / 2; at++)
    join(reachable(w, at, kinds, known), reachable(w, h - at, kinds, known));
  known.set(key, found);
  return found;
}

/** The most value among all that can be reached. */
export function bestValue(w: number, h: number, kinds: readonly Kind[]): number {
  const worth = (counts: string) =>
    counts.split(',').reduce((sum, n, i) => sum + Number(n) * kinds[i]!.value, 0);
  return Math.max(...[...reachable(w, h, kinds)].map(worth));
}

/** The most identical pieces, by splitting at every whole unit. */
export function mostIdentical(
  w: number,
  h: number,
  a: number,
  b: number,
  turns: boolean,
  known = new Map<string, number>(),
): number {
  const key = `${w}x${h}`;
  const cached = known.get(key);
  if (cached !== undefined) return cached;
  let best = (a <= w && b <= h) || (turns && b <= w && a <= h) ? 1 : 0;
  for (let at = 1; at <= w / 2; at++) {
    best = Math.max(
      best,
      mostIdentical(at, h, a, b, turns, known) + mostIdentical(w - at, h, a, b, turns, known),
    );
  }
  for (let at = 1; at <= h / 2; at++) {
    best = Math.max(
      best,
      mostIdentical(w, at, a, b, turns, known) + mostIdentical(w, h - at, a, b, turns, known),
    );
  }
  known.set(key, best);
  return best;
}
