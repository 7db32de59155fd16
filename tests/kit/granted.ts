// The value of what must have been granted, so that a test stops where it was not.
import type { Result } from '../../shared/fault/result.ts';

/** The value of a result that must be one. */
export function granted<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.fault.code}: ${result.fault.message}`);
  return result.value;
}
