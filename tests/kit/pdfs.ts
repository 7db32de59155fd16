// PDFs written by hand, object by object, so that what reads them had no part in writing them.

import { deflateSync } from 'node:zlib';

/** The body of an object: as text, or a stream with its dictionary's entries. */
export type Body = string | { readonly dict?: string; readonly data: string | Uint8Array };

export type Objects = Readonly<Record<number, Body>>;

export type Box = readonly [number, number, number, number];

/** One page; boxes in the page's own units. */
export interface PageParts {
  readonly media?: Box;
  readonly crop?: Box;
  readonly bleed?: Box;
  readonly trim?: Box;
  readonly art?: Box;
  /** As in the file: clockwise. */
  readonly rotate?: number;
  readonly userUnit?: number;
  /** The drawing; several are several streams. */
  readonly drawing?: string | readonly string[];
  /** The inside of the resource dictionary. `null` gives the page none. */
  readonly resources?: string | null;
  /** More entries of the page. */
  readonly more?: string;
}

export interface FileParts {
  /** Objects that the pages refer to, by their numbers: 3 and up, without gaps. */
  readonly objects?: Objects;
  /** More entries of the catalog, and of the root of the page tree. */
  readonly catalog?: string;
  readonly root?: string;
}

/** A card of 5 × 7 in with 1/8 in of bleed: its media box. */
export const CARD: Box = [0, 0, 378, 522];

/** The bytes of a file with these objects, a cross-reference table that is right, and a trailer. */
export function writeObjects(objects: Objects, trailer = '/Root 1 0 R'): Uint8Array {
  const parts: Buffer[] = [Buffer.from('%PDF-1.7\n%\xe2\xe3\xcf\xd3\n', 'latin1')];
  const numbers = Object.keys(objects)
    .map(Number)
    .toSorted((a, b) => a - b);
  const offsets = new Map<number, number>();
  let length = parts[0]!.length;
  const push = (part: Buffer) => {
    parts.push(part);
    length += part.length;
  };
  for (const number of numbers) {
    offsets.set(number, length);
    push(Buffer.from(`${number} 0 obj\n`));
    push(bodyOf(objects[number]!));
    push(Buffer.from('\nendobj\n'));
  }
  const start = length;
  const entries = numbers
    .map((n) => `${n} 1\n${String(offsets.get(n)).padStart(10, '0')} 00000 n \n`)
    .join('');
  const size = Math.max(...numbers) + 1;
  push(Buffer.from(`xref\n0 1\n0000000000 65535 f \n${entries}`));
  push(Buffer.from(`trailer\n<< /Size ${size} ${trailer} >>\nstartxref\n${start}\n%%EOF\n`));
  return new Uint8Array(Buffer.concat(parts));
}

function bodyOf(body: Body): Buffer {
  if (typeof body === 'string') return Buffer.from(body, 'latin1');
  const data = typeof body.data === 'string' ? Buffer.from(body.data, 'latin1') : Buffer.from(body.data);
  const head = Buffer.from(`<< ${body.dict ?? ''} /Length ${data.length} >>\nstream\n`, 'latin1');
  return Buffer.concat([head, data, Buffer.from('\nendstream')]);
}

/** A file with these pages: 1 is its catalog, 2 its page tree, then come the objects given, then the pages. */
export function writePages(pages: readonly PageParts[], file: FileParts = {}): Uint8Array {
  const objects: Record<number, Body> = { ...file.objects };
  let free = Math.max(2, ...Object.keys(objects).map(Number)) + 1;
  const add = (body: Body): string => {
    objects[free] = body;
    free += 1;
    return `${free - 1} 0 R`;
  };
  const kids = pages.map((page) => {
    const drawings = typeof page.drawing === 'string' ? [page.drawing] : (page.drawing ?? []);
    return add(
      pageOf(
        page,
        drawings.map((drawing) => add(pack(drawing))),
      ),
    );
  });
  objects[1] = `<< /Type /Catalog /Pages 2 0 R ${file.catalog ?? ''} >>`;
  objects[2] = `<< /Type /Pages /Count ${pages.length} /Kids [${kids.join(' ')}] ${file.root ?? ''} >>`;
  return writeObjects(objects);
}

function pageOf(page: PageParts, drawings: readonly string[]): string {
  const box = (key: string, value: Box | undefined) =>
    value === undefined ? '' : `/${key} [${value.join(' ')}]`;
  const contents = drawings.length === 1 ? drawings[0] : `[${drawings.join(' ')}]`;
  return [
    '<< /Type /Page /Parent 2 0 R',
    box('MediaBox', page.media),
    box('CropBox', page.crop),
    box('BleedBox', page.bleed),
    box('TrimBox', page.trim),
    box('ArtBox', page.art),
    page.rotate === undefined ? '' : `/Rotate ${page.rotate}`,
    page.userUnit === undefined ? '' : `/UserUnit ${page.userUnit}`,
    page.resources === null ? '' : `/Resources << ${page.resources ?? ''} >>`,
    drawings.length === 0 ? '' : `/Contents ${contents}`,
    page.more ?? '',
    '>>',
  ].join(' ');
}

/** A stream packed as most programs pack it. */
export function pack(data: string | Uint8Array, dict = ''): Body {
  const bytes = typeof data === 'string' ? Buffer.from(data, 'latin1') : data;
  return { dict: `${dict} /Filter /FlateDecode`, data: deflateSync(bytes) };
}

/**
 * A picture of nothing but upright rectangles on whole units, unlike itself however it is turned or mirrored: it fills
 * the box, has another colour in each corner and an F in the middle.
 */
export function signpost([left, bottom, right, top]: Box, ground = '0.85 0.9 1'): string {
  const w = right - left;
  const h = top - bottom;
  const rect = (colour: string, x: number, y: number, rw: number, rh: number) =>
    `${colour} rg ${left + x} ${bottom + y} ${rw} ${rh} re f`;
  const side = Math.floor(Math.min(w, h) / 6);
  const [cx, cy] = [Math.floor(w / 2), Math.floor(h / 2)];
  return [
    rect(ground, 0, 0, w, h),
    rect('1 0 0', 0, 0, side, side),
    rect('0 0.6 0', w - side, 0, side, 2 * side),
    rect('0 0 1', 0, h - side, 2 * side, side),
    rect('1 0.8 0', w - side, h - side, side, side),
    rect('0 0 0', cx - side, cy - side, 8, 2 * side),
    rect('0 0 0', cx - side, cy + side - 8, 2 * side, 8),
    rect('0 0 0', cx - side, cy, side, 8),
  ].join('\n');
}
