// A library that crosses from the window: checked by the very reader that checks files.
import { z } from 'zod';
import type { Library } from '../library/library.ts';
import { readLibrary, writeLibrary } from '../library/readLibrary.ts';

export const crossedLibrary: z.ZodType<Library> = z.unknown().transform((value, context) => {
  const read = rewrite(value);
  if (read?.ok === true) return read.value;
  context.addIssue({ code: 'custom', message: read?.fault.message ?? 'is no library' });
  return z.NEVER;
});

/** The value written as a file and read again, so that it is what a file of it would be. */
function rewrite(value: unknown) {
  try {
    return readLibrary(JSON.parse(writeLibrary(value as Library)));
  } catch {
    return undefined;
  }
}
