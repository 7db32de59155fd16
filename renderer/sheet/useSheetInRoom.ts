// Keeps the view of a sheet in step with the room the window gives it, and with the size of the sheet.
import { type RefObject, useLayoutEffect } from 'react';
import type { Size } from '../../shared/geometry/space.ts';
import type { SheetViewing } from './sheetView.ts';

export function useSheetInRoom(
  room: RefObject<HTMLElement | null>,
  viewing: SheetViewing,
  { w, h }: Size,
): void {
  useLayoutEffect(() => {
    const element = room.current;
    if (element === null) return;
    const measure = () => {
      const window = { w: element.clientWidth, h: element.clientHeight };
      if (window.w > 0 && window.h > 0) viewing.measure(window, { w, h });
    };
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    measure();
    return () => watch.disconnect();
  }, [room, viewing, w, h]);
}
