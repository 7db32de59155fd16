// Libraries on the disk, written by this program or by hand.
import type { Result } from '../../shared/fault/result.ts';
import type { Library } from '../../shared/library/library.ts';
import { readLibrary } from '../../shared/library/readLibrary.ts';
import { readJson } from './readJson.ts';

/** The library of a file. */
export async function readLibraryFile(path: string): Promise<Result<Library>> {
  const json = await readJson(path, 'library');
  return json.ok ? readLibrary(json.value) : json;
}
