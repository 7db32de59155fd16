// Opening a file of art to place its pages, once it has been looked through.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type OpenArt, openArt } from '../../shared/pdf/art/openArt.ts';
import { type ArtReport, type InspectOptions, inspectArt } from './inspectArt.ts';
import { readArtFile } from './readArtFile.ts';

/** A file of art, ready to be placed. */
export interface OpenArtFile {
  readonly name: string;
  /** What was opened: the file, or the copy of it that was mended in memory. */
  readonly bytes: Uint8Array;
  /** The file on the disk, in hexadecimal. */
  readonly sha256: string;
  readonly art: OpenArt;
  /** What the person should know, in words. */
  readonly notices: readonly string[];
}

/**
 * Opens a file in this thread. That is safe only after it was looked through in a thread of its own: hand in what that
 * found, else it is done first, for the pages asked for (all when left out). Refusals: those of {@link inspectArt}, and
 * `art-changed` for a file that is no longer the one that was looked through.
 */
export async function openArtFile(
  path: string,
  inspected?: ArtReport,
  asked: Omit<InspectOptions, 'limits'> = {},
): Promise<Result<OpenArtFile>> {
  const looked = inspected === undefined ? await inspectArt(path, asked) : ok(inspected);
  if (!looked.ok) return looked;
  const report = looked.value;
  const file = await readArtFile(path);
  if (!file.ok) return file;
  const { name, sha256 } = file.value;
  if (sha256 !== report.sha256) return refuse(changed(path, name));
  const { mended } = report;
  const bytes = mended ?? file.value.bytes;
  const opened = await openArt(bytes, { name, password: mended === undefined ? (asked.password ?? '') : '' });
  return opened.ok ? ok({ name, bytes, sha256, art: opened.value, notices: report.notices }) : opened;
}

function changed(path: string, name: string): Fault {
  return {
    code: 'art-changed',
    message: `${name} has changed since it was looked through.`,
    remedy: 'Let the program that writes it finish, then take the file in again.',
    where: path,
  };
}
