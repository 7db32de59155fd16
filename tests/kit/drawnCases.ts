// How property tests draw their cases: the same ones at every run of the tests, others in every round of the deep run.
import fc from 'fast-check';

/** The seed of the tests; a deep run sets another one. */
const seed = Number(process.env.TURNLAY_SEED ?? 1);
/** How many times as many cases as the tests draw; more than once in a deep run alone. */
const factor = Number(process.env.TURNLAY_CASES ?? 1);

/** So many cases, and in a deep run so many times as many. */
export const drawnCases = (count: number): { readonly numRuns: number } => ({ numRuns: count * factor });

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed, ...drawnCases(100) });
