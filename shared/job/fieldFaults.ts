// Complaints about what a person wrote, each with its field, and all of them together as one fault.
import type { z } from 'zod';
import type { Fault, FaultCode } from '../fault/result.ts';
import type { FieldFault } from './lengthReader.ts';

/** The complaint of a schema, its field named as a person would: `pieces[0].trim`. */
export function fieldFault(issue: z.core.$ZodIssue): FieldFault {
  const field = issue.path
    .map((step, i) => (typeof step === 'number' ? `[${step}]` : `${i > 0 ? '.' : ''}${String(step)}`))
    .join('');
  if (issue.code === 'unrecognized_keys') {
    return { field, says: `has no field ${issue.keys.map((k) => `"${k}"`).join(', ')}` };
  }
  if (issue.code === 'invalid_type' && issue.expected === 'object') {
    return { field, says: issue.message.endsWith('undefined') ? 'is missing' : 'must be a group of fields' };
  }
  return { field, says: issue.message };
}

/** How many complaints are said at once; the rest are counted. */
const MAX_FAULTS_SAID = 3;

/** All complaints about a file that a person wrote (`what`: "brief") as one fault. There is at least one. */
export function complain(code: FaultCode, what: string, faults: readonly FieldFault[]): Fault {
  const said = faults
    .slice(0, MAX_FAULTS_SAID)
    .map((f) => `${f.field === '' ? `the ${what}` : f.field}: ${f.says}`);
  const more = faults.length - said.length;
  return {
    code,
    message: `The ${what} cannot be used. ${said.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`,
    remedy: `Correct ${faults.length === 1 ? 'this field' : 'these fields'} in the ${what} and try again.`,
    ...(faults[0] === undefined ? {} : { where: faults[0].field }),
  };
}
