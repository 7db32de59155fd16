// The waste of a side: the marks are where they belong, and the paper around pieces and marks is white.
import { centre, grow } from '../geometry/rect.ts';
import type { Point, Rect, Size } from '../geometry/space.ts';
import { apply, applyToRect, inverse } from '../geometry/transform.ts';
import { boundsOf, type Mark } from '../marks/mark.ts';
import { POINTS_PER } from '../units/length.ts';
import { showNumber } from '../units/show.ts';
import type { PixelArea } from './band.ts';
import type { PlaceOnSide, SheetFinding, SideNumber } from './finding.ts';
import { inkPlaces, type Pixel } from './inkPlaces.ts';
import { isThere } from './markThere.ts';
import { COLOUR_BITS, isInked, type Raster } from './raster.ts';
import { pixelsUnder, type SideDrawing } from './sideDrawing.ts';

/** What belongs on a side: where its pieces may print, and its marks; pt in the frame of the side. */
export interface WantedSide {
  readonly printed: readonly Rect[];
  readonly marks: readonly Mark[];
}

/** Ink may reach this far past where it belongs: a renderer that rounds lets an edge wander by half of it. */
const WASTE_TOLERANCE_MM = 0.34;

/** No more places than this are named for a side, of each kind: one plate off moves every mark. */
const MAX_PLACES_NAMED = 12;

/** Looks at a side as a whole: at its marks, and at the paper around them and the pieces. */
export function checkWaste(
  side: SideNumber,
  drawing: SideDrawing,
  wanted: WantedSide,
): readonly SheetFinding[] {
  const { toPixels, raster, source } = drawing;
  const missing = wanted.marks
    .filter((mark) => !isThere(mark, wanted.marks, drawing))
    .map((mark) => markMissing(side, mark, source.size));
  const back = inverse(toPixels);
  const stray = inkPlaces(strayInk(drawing, wanted), raster.width, toPixels.a * POINTS_PER.mm)
    .map(({ left, top, right, bottom }) =>
      applyToRect(back, { x: left, y: top, w: right - left, h: bottom - top }),
    )
    .map((place) => strayInkAt(side, place, source.size));
  return [...missing.slice(0, MAX_PLACES_NAMED), ...stray.slice(0, MAX_PLACES_NAMED)];
}

/** The pixels with ink that belongs to no piece and no mark. */
function* strayInk(drawing: SideDrawing, { printed, marks }: WantedSide): Generator<Pixel> {
  const { raster, toPixels } = drawing;
  const slack = WASTE_TOLERANCE_MM * POINTS_PER.mm;
  const pieces = printed.map((rect) => pixelsUnder(drawing, grow(rect, slack)));
  const back = inverse(toPixels);
  const near = marks.map((mark) => ({ mark, box: pixelsUnder(drawing, grow(boundsOf(mark), slack)) }));
  const belongs = (x: number, y: number) =>
    near.some(
      ({ mark, box }) => isWithin(box, x, y) && covers(mark, apply(back, { x: x + 0.5, y: y + 0.5 }), slack),
    );
  for (const { left, right, top, bottom } of gapsBetween(pieces, raster)) {
    for (let y = top; y < bottom; y++) {
      for (const x of inkBetween(raster, y, left, right)) if (!belongs(x, y)) yield [x, y];
    }
  }
}

/** The columns of a row with ink, from one column up to another. */
function inkBetween({ width, words }: Raster, y: number, left: number, right: number): readonly number[] {
  const row = words.subarray(y * width + left, y * width + right);
  const columns: number[] = [];
  for (let x = 0; x < row.length; x++) {
    if (isInked(row[x] ?? COLOUR_BITS)) columns.push(left + x);
  }
  return columns;
}

function isWithin({ left, right, top, bottom }: PixelArea, x: number, y: number): boolean {
  return x >= left && x < right && y >= top && y < bottom;
}

/** Whether a point within the bounds of a mark may have its ink. */
function covers(mark: Mark, { x, y }: Point, slack: number): boolean {
  if (mark.kind !== 'ring') return true;
  const off = Math.abs(Math.hypot(x - mark.centre.x, y - mark.centre.y) - mark.radius);
  return off <= mark.width / 2 + slack;
}

/** What the boxes leave of a raster: boxes between them, from band to band in which no box begins or ends. */
function* gapsBetween(boxes: readonly PixelArea[], { width, height }: Raster): Generator<PixelArea> {
  const stops = [...new Set([0, height, ...boxes.flatMap(({ top, bottom }) => [top, bottom])])];
  stops.sort((a, b) => a - b);
  for (const [i, bottom] of stops.entries()) {
    const top = stops[i - 1];
    if (top === undefined) continue;
    const across = boxes.filter((box) => box.top <= top && box.bottom >= bottom);
    let left = 0;
    for (const box of across.sort((a, b) => a.left - b.left)) {
      if (box.left > left) yield { left, right: box.left, top, bottom };
      left = Math.max(left, box.right);
    }
    if (left < width) yield { left, right: width, top, bottom };
  }
}

function markMissing(side: SideNumber, mark: Mark, sheet: Size): SheetFinding {
  const measured = inMillimetres(boundsOf(mark), sheet);
  const message = `Side ${side}: ${nameOf(mark)} should be printed ${placeOf(measured)}, and is not there as it should be.`;
  return { kind: 'mark-missing', side, message, measured };
}

function strayInkAt(side: SideNumber, place: Rect, sheet: Size): SheetFinding {
  const measured = inMillimetres(place, sheet);
  const size = `${showNumber(measured.across, 1)} x ${showNumber(measured.along, 1)} mm`;
  const message = `Side ${side}: there is ink (${size}) ${placeOf(measured)}, where the paper should be white.`;
  return { kind: 'stray-ink', side, message, measured };
}

function nameOf(mark: Mark): string {
  switch (mark.kind) {
    case 'line':
      return 'a line of the marks';
    case 'ring':
      return 'the ring of a register target';
    case 'shape':
      return 'a filled mark';
    case 'words':
      return `the line "${mark.words}"`;
  }
}

/** Where a place of a side is: its middle from the left edge and from the tail, and its size. */
function inMillimetres(place: Rect, sheet: Size): PlaceOnSide {
  const { x, y } = centre(place);
  const mm = (pt: number) => Math.round((pt / POINTS_PER.mm) * 10) / 10;
  const onSheet = (value: number, most: number) => Math.min(Math.max(value, 0), most);
  return {
    left: mm(onSheet(x, sheet.w)),
    tail: mm(onSheet(y, sheet.h)),
    across: mm(place.w),
    along: mm(place.h),
  };
}

function placeOf({ left, tail }: { readonly left: number; readonly tail: number }): string {
  return `${showNumber(left, 1)} mm from the left edge and ${showNumber(tail, 1)} mm from the tail`;
}
