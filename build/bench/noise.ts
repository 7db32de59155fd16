// Noise for the art of benchmarks: numbers that do not repeat, and are the same in every run.

/** A plain generator of numbers from 0 to 1 (Lehmer, 1951; modulus 2^31 - 1). */
export function noiseFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
