// A count that cannot be: the fault it is refused with.
import type { Fault } from '../fault/result.ts';

export function refusedCount(message: string, remedy: string): Fault {
  return { code: 'count-refused', message, remedy };
}
