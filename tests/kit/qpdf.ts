// PDFs changed and read by qpdf, which had no part in writing or reading what is tested.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What qpdf gives for a file, which is called `in.pdf`. */
function inFolder<T>(bytes: Uint8Array, work: (run: (...args: string[]) => string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'qpdf-'));
  try {
    writeFileSync(join(folder, 'in.pdf'), bytes);
    const run = (...args: string[]) =>
      execFileSync('qpdf', args, { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 28, stdio: 'pipe' });
    return work(run, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The same file once qpdf has written it with these options: `['--encrypt', '', 'owner', '256', '--']`. */
export function throughQpdf(bytes: Uint8Array, ...options: readonly string[]): Uint8Array {
  return inFolder(bytes, (run, folder) => {
    run(...options, 'in.pdf', 'out.pdf');
    return new Uint8Array(readFileSync(join(folder, 'out.pdf')));
  });
}

/** A value in qpdf's JSON: names begin with `/`, references look like `4 0 R`, strings begin with `u:` or `b:`. */
// biome-ignore lint/suspicious/noExplicitAny: tests read what they expect to be there
export type Value = any;

/** A file as qpdf reads it. */
export interface ReadObjects {
  /** How many objects there are. */
  readonly count: number;
  readonly catalog: Value;
  /** The object of a reference, the dictionary where it is a stream; any other value is handed back. */
  follow(value: Value): Value;
  isStream(value: Value): boolean;
  /** The bytes of a stream as they stand in the file, still packed. */
  packed(reference: string): Buffer;
}

/** Reads all objects of a file. Throws when qpdf finds anything wrong with it. */
export function readObjects(bytes: Uint8Array): ReadObjects {
  const read = inFolder(bytes, (run) => {
    run('--check', 'in.pdf');
    return run('--json=2', '--json-key=qpdf', '--json-stream-data=inline', '--decode-level=none', 'in.pdf');
  });
  const objects: Record<string, Value> = JSON.parse(read).qpdf[1];
  const find = (reference: Value): Value =>
    typeof reference === 'string' && /^\d+ \d+ R$/.test(reference) ? objects[`obj:${reference}`] : undefined;
  const follow = (value: Value): Value => {
    const found = find(value);
    if (found === undefined) return value;
    return found.stream === undefined ? found.value : found.stream.dict;
  };
  return {
    count: Object.keys(objects).length - 1,
    catalog: follow(objects.trailer.value['/Root']),
    follow,
    isStream: (value) => find(value)?.stream !== undefined,
    packed: (reference) => Buffer.from(find(reference).stream.data, 'base64'),
  };
}

/** The forms that the pages of a file made by the kit show, in order: their references. */
export function formsOf(file: ReadObjects): readonly string[] {
  const kids: string[] = file.follow(file.catalog['/Pages'])['/Kids'];
  return kids.map((kid) => file.follow(file.follow(kid)['/Resources'])['/XObject']['/Face']);
}

/**
 * A value with everything it refers to in its place: two of them are equal when the files draw the same with it. Streams
 * stand with their dictionary and their packed bytes; what leads back to where it came from stands as `(again)`.
 */
export function unfold(file: ReadObjects, value: Value, above: readonly Value[] = []): Value {
  if (above.includes(value)) return '(again)';
  const found = file.follow(value);
  const path = found === value ? above : [...above, value];
  const inside = (part: Value) => unfold(file, part, path);
  if (Array.isArray(found)) return found.map(inside);
  if (found === null || typeof found !== 'object') return found;
  const entries = Object.entries(found).filter(([key]) => key !== '/Length');
  const plain = Object.fromEntries(entries.map(([key, part]) => [key, inside(part)]));
  return file.isStream(value) ? { ...plain, packed: file.packed(value).toString('hex') } : plain;
}
