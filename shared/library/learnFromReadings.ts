// A printer's ink, learnt from the readings of its counter that stand in the library.
import { learnInk } from '../ink/fitInk.ts';
import { USUAL_INK } from '../ink/inkModel.ts';
import type { Printer } from './library.ts';

/** The ink of a printer with the model that its readings give, and why, in words; no words where there are no readings. */
interface LearntFromReadings {
  readonly ink: Printer['ink'];
  readonly says: string | undefined;
}

/**
 * Fits the ink of a printer to its readings. The rule of thumb is kept beside a fit, and counts again once too few
 * readings are left; without any reading the ink stays as it is.
 */
export function learnFromReadings(ink: Printer['ink']): LearntFromReadings {
  const { rule, ...rest } = ink;
  const usual = ink.model.source === 'rule-of-thumb' ? ink.model : (rule ?? USUAL_INK);
  if (ink.readings.length === 0) return { ink, says: undefined };
  const learnt = learnInk(ink.readings, usual);
  if (!learnt.ok) return { ink, says: learnt.fault.message };
  const { model, says } = learnt.value;
  return { ink: { ...rest, model, ...(model.source === 'fitted' ? { rule: usual } : {}) }, says };
}
