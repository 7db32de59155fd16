// How a sheet is looked at: where it is seen in its window. Kept apart from the job and its history.
import { createStore } from 'zustand/vanilla';
import { fitInto, keepInSight, pan, type View, zoomAt } from '../../shared/bench/view.ts';
import type { Point, Size } from '../../shared/geometry/space.ts';

export interface SheetView {
  readonly window: Size;
  readonly view: View;
  /** Whether the whole sheet is kept in the window as it changes its size. */
  readonly fitted: boolean;
}

/** Room around a fitted sheet, in px: for the rulers, the lead edge and the handles. */
const FITTED_MARGIN_PX = 64;
/** So much of the sheet always stays in the window, in px. */
const MIN_SEEN_PX = 80;

/** How a sheet of some size is looked at. */
export function createSheetView() {
  let sheet: Size = { w: 1, h: 1 };
  const store = createStore<SheetView>(() => ({
    window: { w: 1, h: 1 },
    view: { x: 0, y: 0, zoom: 1 },
    fitted: true,
  }));
  const look = (view: View) => {
    const { window } = store.getState();
    store.setState({ view: keepInSight(view, window, sheet, MIN_SEEN_PX), fitted: false });
  };
  const showWhole = () => {
    const { window } = store.getState();
    store.setState({ view: fitInto(window, sheet, FITTED_MARGIN_PX), fitted: true });
  };
  return {
    store,
    showWhole,
    /** The window has this size, the sheet that one. */
    measure: (window: Size, nextSheet: Size) => {
      const changed = sheet.w !== nextSheet.w || sheet.h !== nextSheet.h;
      sheet = nextSheet;
      const { fitted, view } = store.getState();
      store.setState({ window });
      if (fitted || changed) showWhole();
      else look(view);
    },
    panBy: (dx: number, dy: number) => look(pan(store.getState().view, dx, dy)),
    /** `factor` times as near, about the cursor or else the middle of the window. */
    zoomBy: (factor: number, cursor?: Point<'screen'>) => {
      const { view, window } = store.getState();
      look(zoomAt(view, cursor ?? { x: window.w / 2, y: window.h / 2 }, factor));
    },
  };
}

export type SheetViewing = ReturnType<typeof createSheetView>;
