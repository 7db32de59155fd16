// The sheet as the knife sees it: the lines along which it may come down, and the parts between them.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';

/** Numbers of lines, counted from 0: `left` and `right` of lines up the sheet, `tail` and `lead` of lines across it. */
export type Bounds = Readonly<Record<SheetEdge, number>>;

/** A part of the sheet between four lines, and the numbers of the pieces in it. */
export interface Part extends Bounds {
  readonly pieces: readonly number[];
}

/** Lines run `up` the sheet, at some x, or `across` it, at some y. */
export type LineWay = 'up' | 'across';

/** The lines of a sheet, at its edges and along every trim, and its pieces between them. */
export interface CuttingGrid {
  /** Where the lines lie, rising, in pt. */
  readonly at: Readonly<Record<LineWay, readonly number[]>>;
  readonly trims: readonly Bounds[];
}

/** Lines that no person can tell apart are one line. Pieces lie on the sheet, the tolerance granted. */
export function fieldOf(sheet: Size, trims: readonly Rect<'side1'>[]): CuttingGrid {
  const up = distinct([0, sheet.w, ...trims.flatMap((t) => [t.x, t.x + t.w])], sheet.w);
  const across = distinct([0, sheet.h, ...trims.flatMap((t) => [t.y, t.y + t.h])], sheet.h);
  return {
    at: { up, across },
    trims: trims.map((t) => ({
      left: lineNear(up, t.x),
      right: lineNear(up, t.x + t.w),
      tail: lineNear(across, t.y),
      lead: lineNear(across, t.y + t.h),
    })),
  };
}

function distinct(places: readonly number[], last: number): readonly number[] {
  const lines = [0];
  for (const place of places.toSorted((a, b) => a - b)) {
    const before = lines[lines.length - 1] ?? 0;
    if (place > before + TOLERANCE && place < last - TOLERANCE) lines.push(place);
  }
  return [...lines, last];
}

function lineNear(lines: readonly number[], place: number): number {
  let best = 0;
  lines.forEach((line, i) => {
    if (Math.abs(line - place) < Math.abs((lines[best] ?? 0) - place)) best = i;
  });
  return best;
}

/** The whole sheet. */
export function wholeSheet(field: CuttingGrid): Part {
  const { up, across } = field.at;
  return {
    left: 0,
    right: up.length - 1,
    tail: 0,
    lead: across.length - 1,
    pieces: field.trims.map((_t, i) => i),
  };
}

/** Whether the edge of this part is an edge of the untrimmed sheet. */
export function isRaw(field: CuttingGrid, part: Bounds, edge: SheetEdge): boolean {
  return part[edge] === wholeSheet(field)[edge];
}

/** Where the line of this number lies, in pt. */
export function placeOnSheet(field: CuttingGrid, way: LineWay, line: number): number {
  const place = field.at[way][line];
  if (place === undefined) throw new Error(`There is no line number ${line} ${way} the sheet`);
  return place;
}

/** A part on side 1, in pt. */
export function areaOf(field: CuttingGrid, part: Bounds): Rect<'side1'> {
  const x = placeOnSheet(field, 'up', part.left);
  const y = placeOnSheet(field, 'across', part.tail);
  return {
    x,
    y,
    w: placeOnSheet(field, 'up', part.right) - x,
    h: placeOnSheet(field, 'across', part.lead) - y,
  };
}

/** The lines around the pieces of a part, of which there is at least one. */
export function boundsOfPieces(field: CuttingGrid, pieces: readonly number[]): Bounds {
  let [left, right, tail, lead] = [Infinity, 0, Infinity, 0];
  for (const piece of pieces) {
    const trim = trimOfPiece(field, piece);
    left = Math.min(left, trim.left);
    right = Math.max(right, trim.right);
    tail = Math.min(tail, trim.tail);
    lead = Math.max(lead, trim.lead);
  }
  return { left, right, tail, lead };
}

/** The lines around a piece. */
export function trimOfPiece(field: CuttingGrid, piece: number): Bounds {
  const trim = field.trims[piece];
  if (trim === undefined) throw new Error(`There is no piece number ${piece}`);
  return trim;
}

/** Where a part begins and ends in one direction, as numbers of lines. */
export function spanOfTrim(bounds: Bounds, way: LineWay): readonly [number, number] {
  return way === 'up' ? [bounds.left, bounds.right] : [bounds.tail, bounds.lead];
}

/** The lines inside a part, rising, that lie along a trim and run through none of its pieces. */
export function clearLines(field: CuttingGrid, part: Part, way: LineWay): readonly number[] {
  const [first, last] = spanOfTrim(part, way);
  const trims = new Set<number>();
  const blocked = new Int32Array(last - first + 2);
  for (const piece of part.pieces) {
    const [from, to] = spanOfTrim(trimOfPiece(field, piece), way);
    trims.add(from).add(to);
    blocked[from + 1 - first] = (blocked[from + 1 - first] ?? 0) + 1;
    blocked[to - first] = (blocked[to - first] ?? 0) - 1;
  }
  const clear: number[] = [];
  let over = 0;
  for (let line = first + 1; line < last; line++) {
    over += blocked[line - first] ?? 0;
    if (over === 0 && trims.has(line)) clear.push(line);
  }
  return clear;
}

/** The two parts that a cut along a clear line leaves, the one on its left or tail side first. */
export function partAt(field: CuttingGrid, part: Part, way: LineWay, line: number): readonly [Part, Part] {
  const before: number[] = [];
  const after: number[] = [];
  for (const piece of part.pieces) {
    const isBefore = spanOfTrim(trimOfPiece(field, piece), way)[1] <= line;
    (isBefore ? before : after).push(piece);
  }
  const [end, start] = way === 'up' ? (['right', 'left'] as const) : (['lead', 'tail'] as const);
  return [
    { ...part, [end]: line, pieces: before },
    { ...part, [start]: line, pieces: after },
  ];
}

/** A name for a part that no other part of the same sheet has. */
export function partKey({ left, right, tail, lead }: Bounds): string {
  return `${left} ${right} ${tail} ${lead}`;
}

/** Whether nothing is left to cut: the part is waste, or just one piece. */
export function isDone(field: CuttingGrid, part: Part): boolean {
  const [first, another] = part.pieces;
  if (first === undefined) return true;
  return another === undefined && partKey(boundsOfPieces(field, [first])) === partKey(part);
}
