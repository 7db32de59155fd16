// The fault of an edit that cannot be done; the job stays as it was.
import type { Fault } from '../fault/result.ts';

export function refused(message: string, remedy = 'Nothing has been changed; try it another way.'): Fault {
  return { code: 'edit-refused', message, remedy };
}
