// Reading JSON that a person named: there, readable, and JSON, or a sentence that says which it is not.
import { readFile } from 'node:fs/promises';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { readingFault } from './fileFaults.ts';

/** The parsed content of a JSON file, called `what` in refusals (`file-missing`, `file-unreadable`). */
export async function readJson(path: string, what: string): Promise<Result<unknown>> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    return refuse(readingFault(error, path));
  }
  return parseJson(text, (why) => ({
    code: 'file-unreadable',
    message: `The ${what} ${path} is not JSON: ${why}.`,
    remedy: `Check it for a missing comma, quote or bracket, or choose another ${what}.`,
    where: path,
  }));
}

/** The value of a JSON text, with or without the mark that some editors put before it; `notJson` makes the refusal. */
export function parseJson(text: string, notJson: (why: string) => Fault): Result<unknown> {
  try {
    return ok(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch (error) {
    return refuse(notJson(error instanceof Error ? error.message : String(error)));
  }
}
