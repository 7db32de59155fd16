// Chance that falls alike every time: the same order gives the same plan.

/**
 * Numbers from 0 to below 1, the same ones for the same seed.
 *
 * @source a linear congruential generator with the constants of Numerical Recipes (1664525, 1013904223); from memory.
 */
export function chanceFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
