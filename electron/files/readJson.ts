// Reading a JSON file that a person named: there, readable, and JSON, or a sentence that says which it is not.
import { readFile } from 'node:fs/promises';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { readingFault } from '../host/fileFaults.ts';

/** The parsed content of a JSON file, called `what` in refusals (`file-missing`, `file-unreadable`). */
export async function readJson(path: string, what: string): Promise<Result<unknown>> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    return refuse(readingFault(error, path));
  }
  try {
    return ok(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch (error) {
    return refuse({
      code: 'file-unreadable',
      message: `The ${what} ${path} is not JSON: ${error instanceof Error ? error.message : String(error)}.`,
      remedy: `Check it for a missing comma, quote or bracket, or choose another ${what}.`,
      where: path,
    });
  }
}
