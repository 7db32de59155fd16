// How the sheet is seen in the window: zooming to the cursor, panning, fitting.
import type { Point, Rect, Side, Size } from '../geometry/space.ts';
import type { Transform } from '../geometry/transform.ts';

/** Where the sheet is seen: its lower left corner on the screen, in px, and the zoom in px to the pt. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly zoom: number;
}

/** A sheet of a metre still fits a small window; a hairline of 0.25 pt becomes eight px wide. */
export const ZOOM_LIMITS = { least: 0.05, most: 32 } as const;

/** From a side of the sheet to the screen. */
export function toScreen<S extends Side>(view: View): Transform<S, 'screen'> {
  return { a: view.zoom, b: 0, c: 0, d: -view.zoom, e: view.x, f: view.y };
}

/** The same view `factor` times as near; what lies under the cursor stays under it. */
export function zoomAt(view: View, cursor: Point<'screen'>, factor: number): View {
  const zoom = clamp(view.zoom * factor, ZOOM_LIMITS.least, ZOOM_LIMITS.most);
  const grown = zoom / view.zoom;
  return { x: cursor.x + (view.x - cursor.x) * grown, y: cursor.y + (view.y - cursor.y) * grown, zoom };
}

/** The view moved by (dx, dy) px. */
export function pan(view: View, dx: number, dy: number): View {
  return { ...view, x: view.x + dx, y: view.y + dy };
}

/** The whole sheet in the middle of the window, with at least `margin` px around it. */
export function fitInto(window: Size, sheet: Size, margin: number): View {
  const room = { w: Math.max(1, window.w - 2 * margin), h: Math.max(1, window.h - 2 * margin) };
  const zoom = clamp(Math.min(room.w / sheet.w, room.h / sheet.h), ZOOM_LIMITS.least, ZOOM_LIMITS.most);
  return { x: (window.w - sheet.w * zoom) / 2, y: (window.h + sheet.h * zoom) / 2, zoom };
}

/** The view, moved so far that at least `least` px of the sheet stay in the window in either direction. */
export function keepInSight(view: View, window: Size, sheet: Size, least: number): View {
  const w = sheet.w * view.zoom;
  const h = sheet.h * view.zoom;
  return {
    ...view,
    x: clamp(view.x, Math.min(least, w) - w, window.w - Math.min(least, w)),
    y: clamp(view.y, Math.min(least, h), window.h + h - Math.min(least, h)),
  };
}

/** The upright rectangle between two corners, whichever they are. */
export function between<S extends Side | 'screen'>(a: Point<S>, b: Point<S>): Rect<S> {
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    w: Math.abs(a.x - b.x),
    h: Math.abs(a.y - b.y),
  };
}

function clamp(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, value));
}
