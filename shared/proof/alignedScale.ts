// The scale at which places fall on the same part of a pixel, so that what is printed at each is drawn alike.

/** So many places to look for within a pixel: two places nearer than this differ by a level of 255 at most. */
export const PHASES = 256;

/** A drawing is made at most so many times as fine for the sake of it. */
const MAX_STRETCH = 1.1;

/** So many steps between neighbours are tried, the most frequent first. */
const MAX_STEPS_TRIED = 8;

/**
 * Pixels to the pt, no less than `scale` and at most a tenth more, at which the places (pt along one axis) fall on the
 * fewest different parts of a pixel. At the scale of a grid's own step that is one, and then one drawing of the art
 * stands for what is printed at all of them.
 */
export function alignedScale(places: readonly number[], scale: number): number {
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  const candidates = stepsBetween(sorted).flatMap((step) => {
    const whole = Math.ceil(scale * step - 1 / PHASES);
    const more = Math.max(0, Math.floor(scale * MAX_STRETCH * step) - whole);
    return Array.from({ length: more + 1 }, (_, i) => (whole + i) / step);
  });
  let best = { scale, phases: phasesAt(sorted, scale) };
  for (const candidate of candidates.sort((a, b) => a - b)) {
    const phases = phasesAt(sorted, candidate);
    if (phases < best.phases) best = { scale: candidate, phases };
  }
  return best.scale;
}

function phasesAt(places: readonly number[], scale: number): number {
  const [first = 0] = places;
  const phaseOf = (place: number) => Math.round((place - first) * scale * PHASES) % PHASES;
  return new Set(places.map(phaseOf)).size;
}

/** The steps from a place to the next, the most frequent first. */
function stepsBetween(sorted: readonly number[]): readonly number[] {
  const counts = new Map<number, number>();
  for (const [i, place] of sorted.entries()) {
    const step = place - (sorted[i - 1] ?? place);
    const known = [...counts.keys()].find((other) => Math.abs(other - step) < 1e-9);
    if (step > 1e-6) counts.set(known ?? step, (counts.get(known ?? step) ?? 0) + 1);
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, MAX_STEPS_TRIED)
    .map(([step]) => step);
}
