// Reading a file of art from the disk, with the mark by which it is known again.
import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { sha256Of } from '../disk/hashes.ts';

/** The largest file that is read, in bytes. @source common practice, no source */
const MAX_ART_BYTES = 512 * 1024 * 1024;

/** A file of art as it lies on the disk. */
export interface ArtFile {
  /** What it is called in sentences: the name without the folders. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** In hexadecimal; a file that differs in one byte has another. */
  readonly sha256: string;
}

/**
 * Reads a file, and works its mark out unless that was done as the file came. Refusals: `art-missing`,
 * `file-unreadable`, `art-too-large`.
 */
export async function readArtFile(path: string, known?: string): Promise<Result<ArtFile>> {
  const name = basename(path);
  try {
    const found = await stat(path);
    if (!found.isFile()) return refuse(noFile(path, name));
    if (found.size > MAX_ART_BYTES) return refuse(tooLarge(path, name, found.size));
    const bytes = await readFile(path);
    const sha256 = known ?? sha256Of(bytes);
    return ok({ name, bytes: new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length), sha256 });
  } catch (error) {
    return refuse(unread(path, name, error));
  }
}

function unread(path: string, name: string, error: unknown): Fault {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT' || code === 'ENOTDIR') {
    return {
      code: 'art-missing',
      message: `${name} is not where the brief says: there is no ${path}.`,
      remedy:
        'Put the file there, or correct its name in the brief; files are named from where the brief lies.',
      where: path,
    };
  }
  return {
    code: 'file-unreadable',
    message: `${name} cannot be read${code === 'EACCES' || code === 'EPERM' ? ': you may not open it' : ''}.`,
    remedy: `See to it that ${path} can be opened and that its disk or share is there, then try again.`,
    where: path,
  };
}

function noFile(path: string, name: string): Fault {
  return {
    code: 'file-unreadable',
    message: `${name} is a folder or something else that is no file.`,
    remedy: 'Name the PDF itself in the brief.',
    where: path,
  };
}

function tooLarge(path: string, name: string, size: number): Fault {
  const megabytes = (bytes: number) => `${Math.ceil(bytes / (1024 * 1024))} MB`;
  return {
    code: 'art-too-large',
    message: `${name} has ${megabytes(size)}; at most ${megabytes(MAX_ART_BYTES)} are read.`,
    remedy: 'Export only the pages that this job prints, with pictures at the resolution that is printed.',
    where: path,
  };
}
