// Keeps the view of the bench in step with the room the window gives it, and with the size of the sheet.
import { type RefObject, useLayoutEffect } from 'react';
import { sheetOf } from '../../shared/job/job.ts';
import type { BenchViewing } from './benchView.ts';
import { useSettledJob } from './useSettledJob.ts';

export function useSheetInRoom(room: RefObject<HTMLElement | null>, viewing: BenchViewing): void {
  const { w, h } = sheetOf(useSettledJob().brief).size;
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
