import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  fitInto,
  keepInSight,
  pan,
  toScreen,
  ZOOM_LIMITS,
  zoomAt,
} from '../../../shared/bench/view.ts';
import { apply, inverse } from '../../../shared/geometry/transform.ts';
import { numberFrom } from '../../kit/anyNumber.ts';

const sheet = { w: 792, h: 1224 };
const window = { w: 1000, h: 800 };

describe('the view of the sheet', () => {
  it('has the lead edge at the top of the screen', () => {
    const view = { x: 100, y: 700, zoom: 0.5 };
    expect(apply(toScreen(view), { x: 0, y: 0 })).toEqual({ x: 100, y: 700 });
    expect(apply(toScreen(view), { x: 792, y: 1224 })).toEqual({ x: 496, y: 88 });
  });

  it('leads from the cursor back to the sheet', () => {
    const view = { x: 100, y: 700, zoom: 0.5 };
    expect(apply(inverse(toScreen<'side1'>(view)), { x: 496, y: 88 })).toEqual({ x: 792, y: 1224 });
  });

  it('zooms so that the place under the cursor stays under it', () => {
    const near = numberFrom(0.25, 5);
    const px = numberFrom(-500, 1500);
    fc.assert(
      fc.property(px, px, near, px, px, near, (x, y, zoom, cx, cy, factor) => {
        const before = { x, y, zoom };
        const cursor = { x: cx, y: cy };
        const after = zoomAt(before, cursor, factor);
        const place = apply(inverse(toScreen<'side1'>(before)), cursor);
        const seen = apply(toScreen<'side1'>(after), place);
        expect(seen.x).toBeCloseTo(cx, 6);
        expect(seen.y).toBeCloseTo(cy, 6);
        expect(after.zoom).toBeCloseTo(zoom * factor, 9);
      }),
    );
  });

  it('zooms no nearer and no farther than is of use, the cursor still held', () => {
    const view = { x: 40, y: 60, zoom: 1 };
    expect(zoomAt(view, { x: 40, y: 60 }, 1e6)).toEqual({ x: 40, y: 60, zoom: ZOOM_LIMITS.most });
    expect(zoomAt(view, { x: 0, y: 0 }, 1e-6)).toEqual({ x: 2, y: 3, zoom: ZOOM_LIMITS.least });
  });

  it('pans by what the hand moved', () => {
    expect(pan({ x: 1, y: 2, zoom: 3 }, 10, -20)).toEqual({ x: 11, y: -18, zoom: 3 });
  });

  it('fits a sheet that is long for the window by its length, in the middle', () => {
    const view = fitInto(window, sheet, 40);
    expect(view.zoom).toBeCloseTo(720 / 1224, 12);
    expect(view.x).toBeCloseTo((1000 - 792 * (720 / 1224)) / 2, 9);
    expect(view.y).toBeCloseTo(760, 9);
  });

  it('fits a sheet that is wide for the window by its width', () => {
    const view = fitInto({ w: 480, h: 2000 }, sheet, 40);
    expect(view).toEqual({ x: 40, y: (2000 + (1224 * 400) / 792) / 2, zoom: 400 / 792 });
  });

  it('still shows something in a window that is smaller than its margins', () => {
    expect(fitInto({ w: 10, h: 10 }, sheet, 40).zoom).toBe(ZOOM_LIMITS.least);
  });

  it('keeps part of the sheet in the window however far it is panned', () => {
    const far = { x: 5000, y: -5000, zoom: 1 };
    expect(keepInSight(far, window, sheet, 50)).toEqual({ x: 950, y: 50, zoom: 1 });
    const farther = { x: -5000, y: 5000, zoom: 1 };
    expect(keepInSight(farther, window, sheet, 50)).toEqual({ x: 50 - 792, y: 800 + 1224 - 50, zoom: 1 });
    const here = { x: 100, y: 700, zoom: 0.5 };
    expect(keepInSight(here, window, sheet, 50)).toEqual(here);
  });

  it('keeps a sheet in the window that is smaller than what must stay', () => {
    const tiny = { x: 5000, y: -5000, zoom: 0.05 };
    const kept = keepInSight(tiny, window, sheet, 50);
    expect(kept.x).toBeCloseTo(1000 - 792 * 0.05, 9);
    expect(kept.y).toBe(50);
  });

  it('draws a frame between two corners, whichever way it was drawn', () => {
    const frame = { x: 2, y: 3, w: 8, h: 4 };
    expect(between<'screen'>({ x: 2, y: 3 }, { x: 10, y: 7 })).toEqual(frame);
    expect(between<'screen'>({ x: 10, y: 3 }, { x: 2, y: 7 })).toEqual(frame);
    expect(between<'screen'>({ x: 10, y: 7 }, { x: 2, y: 3 })).toEqual(frame);
  });
});
