// The drawing of a page, made fit to stand inside a form.
import { PDFRawStream } from 'pdf-lib';
import type { ArtLimits } from '../art/limits.ts';
import type { Leaf } from '../art/pageTree.ts';
import { asArray, follow, under } from '../art/peek.ts';
import { balance } from './balance.ts';
import { unpack } from './unpack.ts';

/** The drawing as the file packs it, or as plain bytes where it had to be joined or set right. */
export type PageContent =
  | { readonly packed: PDFRawStream }
  | { readonly plain: Uint8Array; readonly mended: boolean };

/**
 * The drawing of a page: one stream stays packed as it is; several are joined, since together they are one drawing.
 * One stream that cannot be unpacked here is handed on as it is, for whoever prints it to read as it reads the page.
 *
 * @source ISO 32000-1, 7.8.2: the streams of an array are one stream, divided between its tokens.
 */
export function readDrawing(leaf: Leaf, limits: ArtLimits): PageContent | 'too-large' | 'unreadable' {
  const { context } = leaf.dict;
  const contents = under(leaf.dict, 'Contents');
  const entries = asArray(context, contents)?.asArray() ?? [contents];
  const streams: PDFRawStream[] = [];
  for (const entry of entries) {
    const found = follow(context, entry);
    if (found instanceof PDFRawStream) streams.push(found);
    else if (found !== undefined) return 'unreadable';
  }

  const [only, ...others] = streams;
  if (only !== undefined && others.length === 0) return readOne(only, limits);
  const parts: Uint8Array[] = [];
  let room = limits.unpacked;
  for (const stream of streams) {
    const part = unpack(stream, room);
    if (typeof part === 'string') return part;
    parts.push(part);
    room -= part.length;
  }
  const joined = join(parts);
  const plain = balance(joined);
  return { plain, mended: plain !== joined };
}

function readOne(stream: PDFRawStream, limits: ArtLimits): PageContent | 'too-large' {
  const unpacked = unpack(stream, limits.unpacked);
  if (unpacked === 'too-large') return unpacked;
  if (unpacked === 'unreadable') return { packed: stream };
  const plain = balance(unpacked);
  return plain === unpacked ? { packed: stream } : { plain, mended: true };
}

function join(parts: readonly Uint8Array[]): Uint8Array {
  const joined = new Uint8Array(parts.reduce((length, part) => length + part.length + 1, 0));
  let at = 0;
  for (const part of parts) {
    joined.set(part, at);
    at += part.length;
    joined[at] = 0x0a;
    at += 1;
  }
  return joined;
}
