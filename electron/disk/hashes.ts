// The SHA-256 of files, worked out again only when a file has changed.
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';

export function sha256Of(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Hashes of files by path, each known for as long as its file keeps its size and its time of change. */
export class FileHashes {
  readonly #known = new Map<string, { readonly mark: string; readonly sha256: string }>();

  /** Takes over a hash that was worked out as the file was written. Throws what the system throws. */
  async note(path: string, sha256: string): Promise<void> {
    this.#known.set(path, { mark: await markOf(path), sha256 });
  }

  /** In hex. Throws what the system throws. */
  async of(path: string): Promise<string> {
    const mark = await markOf(path);
    const known = this.#known.get(path);
    if (known?.mark === mark) return known.sha256;
    const hash = createHash('sha256');
    for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
    const sha256 = hash.digest('hex');
    this.#known.set(path, { mark, sha256 });
    return sha256;
  }
}

async function markOf(path: string): Promise<string> {
  const { size, mtimeMs, ino } = await stat(path);
  return `${size} ${mtimeMs} ${ino}`;
}
