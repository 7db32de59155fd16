// The waste of a side: the marks are where they belong, and the paper around pieces and marks is white.
import { centre, grow } from '../geometry/rect.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { boundsOf, type Mark } from '../marks/mark.ts';
import { POINTS_PER } from '../units/length.ts';
import { ROUNDING } from './band.ts';
import type { Place, SheetFinding, SideNumber } from './finding.ts';
import { WORKING_DPI } from './grid.ts';
import { inkPlaces } from './inkPlaces.ts';
import { isThere } from './markThere.ts';
import type { Picture } from './picture.ts';
import type { Sight } from './sight.ts';

/** What belongs on a side: where its pieces may print, and its marks; pt in the frame of the side. */
export interface WantedSide {
  readonly printed: readonly Rect[];
  readonly marks: readonly Mark[];
}

/** A sheet of more pixels than this is looked at more coarsely; one of B2 still has 4 pixels to the mm. */
const MAX_SHEET_PIXELS = 8_000_000;

/** Ink may reach this far past where it belongs: twice what a renderer lets an edge wander. */
const WASTE_TOLERANCE_PX = 2;

/** No more places than this are told for a side, of each kind: one plate off moves every mark. */
const MAX_PLACES_TOLD = 12;

/** Looks at a side as a whole, once. */
export function checkWaste(side: SideNumber, sight: Sight, wanted: WantedSide): readonly SheetFinding[] {
  const { w, h } = sight.size;
  const scale = Math.min(WORKING_DPI / 72, Math.sqrt(MAX_SHEET_PIXELS / (w * h)));
  const lens = { a: scale, b: 0, c: 0, d: -scale, e: 0, f: h * scale };
  const picture = sight.photograph(lens, Math.ceil(w * scale), Math.ceil(h * scale));
  const missing = wanted.marks
    .filter((mark) => !isThere(mark, wanted.marks, { picture, scale, height: h }))
    .map((mark) => markMissing(side, mark, sight.size));
  const stray = inkPlaces(strayInk(picture, scale, h, wanted), picture.width, scale)
    .map((place) => ({ ...place, y: h - place.y - place.h }))
    .map((place) => strayInkAt(side, place, sight.size));
  return [...missing.slice(0, MAX_PLACES_TOLD), ...stray.slice(0, MAX_PLACES_TOLD)];
}

/** A byte for each pixel: 1 where there is ink that belongs to no piece and no mark. */
function strayInk(picture: Picture, scale: number, height: number, wanted: WantedSide): Uint8Array {
  const slack = WASTE_TOLERANCE_PX / scale;
  const stray = inkOf(picture);
  const clear = ({ x, y, w, h }: Rect, belongs: (x: number, y: number) => boolean) => {
    const top = Math.max(0, Math.floor((height - y - h) * scale));
    const bottom = Math.min(picture.height, Math.ceil((height - y) * scale));
    const left = Math.max(0, Math.floor(x * scale));
    const right = Math.min(picture.width, Math.ceil((x + w) * scale));
    for (let row = top; row < bottom; row++) {
      for (let column = left; column < right; column++) {
        const at = row * picture.width + column;
        if (stray[at] === 1 && belongs((column + 0.5) / scale, height - (row + 0.5) / scale)) stray[at] = 0;
      }
    }
  };
  for (const rect of wanted.printed) clear(grow(rect, slack), () => true);
  for (const mark of wanted.marks) {
    clear(grow(boundsOf(mark), slack), (x, y) => {
      if (mark.kind !== 'ring') return true;
      const off = Math.abs(Math.hypot(x - mark.centre.x, y - mark.centre.y) - mark.radius);
      return off <= mark.width / 2 + slack;
    });
  }
  return stray;
}

/** A byte for each pixel: 1 where it is not white. */
function inkOf({ width, height, pixels }: Picture): Uint8Array {
  const ink = new Uint8Array(width * height);
  for (let i = 0; i < pixels.length; i++) {
    if ((pixels[i] ?? 255) < 255 - ROUNDING) ink[Math.floor(i / 3)] = 1;
  }
  return ink;
}

function markMissing(side: SideNumber, mark: Mark, sheet: Size): SheetFinding {
  const measured = inMillimetres(boundsOf(mark), sheet);
  const message = `Side ${side}: ${nameOf(mark)} should be printed ${placeOf(measured)}, and is not there as it should be.`;
  return { kind: 'mark-missing', side, message, measured };
}

function strayInkAt(side: SideNumber, place: Rect, sheet: Size): SheetFinding {
  const measured = inMillimetres(place, sheet);
  const size = `${measured.across.toFixed(1)} x ${measured.along.toFixed(1)} mm`;
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
function inMillimetres(place: Rect, sheet: Size): Place {
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
  return `${left.toFixed(1)} mm from the left edge and ${tail.toFixed(1)} mm from the tail`;
}
