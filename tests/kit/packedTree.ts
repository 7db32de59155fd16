// The packed app laid out as Electron sees it: its archive unpacked under the archive's own name, real files beside it.
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

export interface ArchiveEntry {
  readonly files?: Readonly<Record<string, ArchiveEntry>>;
  /** It lies as a real file beside the archive. */
  readonly unpacked?: boolean;
  readonly offset?: string;
  readonly size?: number;
}

/** The files of an archive by their names, from the header that it begins with. */
export function namesIn(archive: string): ReadonlyMap<string, ArchiveEntry> {
  const bytes = readFileSync(archive);
  const header = JSON.parse(bytes.subarray(16, 16 + bytes.readUInt32LE(12)).toString('utf8')) as ArchiveEntry;
  const found = new Map<string, ArchiveEntry>();
  const walk = (entry: ArchiveEntry, at: string) => {
    for (const [name, inner] of Object.entries(entry.files ?? {})) {
      if (inner.files === undefined) found.set(`${at}${name}`, inner);
      else walk(inner, `${at}${name}/`);
    }
  };
  walk(header, '');
  return found;
}

/** Lays the tree out; what the archive says lies outside is only there. Gives where the archive's files begin. */
export function layOutTree(resources: string, into: string): string {
  const archive = join(resources, 'app.asar');
  const bytes = readFileSync(archive);
  const start = 8 + bytes.readUInt32LE(4);
  const app = join(into, 'app.asar');
  for (const [name, { unpacked, offset, size = 0 }] of namesIn(archive)) {
    if (unpacked === true) continue;
    const at = start + Number(offset);
    mkdirSync(dirname(join(app, name)), { recursive: true });
    writeFileSync(join(app, name), bytes.subarray(at, at + size));
  }
  cpSync(`${archive}.unpacked`, join(into, 'app.asar.unpacked'), { recursive: true });
  return app;
}
