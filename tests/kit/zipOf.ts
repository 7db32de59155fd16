// A zip archive of a few small files, stored as they are, with the rights that Unix programs need.
import { crc32 } from 'node:zlib';

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const MADE_ON_UNIX = 0x0314;
/** 1 January 1980, the first day that a zip archive knows. */
const FIRST_DAY = 0x21;

/** @source PKWARE APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16 (from memory) */
export function zipOf(files: Readonly<Record<string, string>>, mode = 0o100755): Buffer {
  const parts: Buffer[] = [];
  const entries: Buffer[] = [];
  let at = 0;
  for (const [name, text] of Object.entries(files)) {
    const body = Buffer.from(text);
    const shared = fields([20, 0, 0, 0, FIRST_DAY], [crc32(body), body.length, body.length]);
    const lengths = fields([Buffer.byteLength(name), 0], []);
    const local = Buffer.concat([fields([], [LOCAL]), shared, lengths, Buffer.from(name), body]);
    const rest = fields([0, 0, 0], [mode * 0x10000, at]);
    entries.push(
      Buffer.concat([
        fields([], [CENTRAL]),
        fields([MADE_ON_UNIX], []),
        shared,
        lengths,
        rest,
        Buffer.from(name),
      ]),
    );
    parts.push(local);
    at += local.length;
  }
  const central = Buffer.concat(entries);
  const end = Buffer.concat([
    fields([], [END]),
    fields([0, 0, entries.length, entries.length], [central.length, at]),
    fields([0], []),
  ]);
  return Buffer.concat([...parts, central, end]);
}

/** Numbers of two bytes, then numbers of four, the lowest byte first. */
function fields(short: readonly number[], long: readonly number[]): Buffer {
  const bytes = Buffer.alloc(short.length * 2 + long.length * 4);
  for (const [i, value] of short.entries()) bytes.writeUInt16LE(value, i * 2);
  for (const [i, value] of long.entries()) bytes.writeUInt32LE(value >>> 0, short.length * 2 + i * 4);
  return bytes;
}
