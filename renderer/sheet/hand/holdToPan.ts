// A hand that carries the view of the sheet with it.
import type { Point } from '../../../shared/geometry/space.ts';
import type { PointerDrag } from './followHand.ts';

/** A hand that moves less than this, in px, has only pressed. */
export const CLICK_SLOP_PX = 3;

/** `onClick` is told when the hand let go where it had pressed. */
export function holdToPan(
  from: Point<'screen'>,
  panBy: (dx: number, dy: number) => void,
  onClick: () => void = () => {},
): PointerDrag {
  let last = from;
  let farthest = 0;
  return {
    move: (at) => {
      farthest = Math.max(farthest, Math.hypot(at.x - from.x, at.y - from.y));
      panBy(at.x - last.x, at.y - last.y);
      last = at;
    },
    end: () => {
      if (farthest < CLICK_SLOP_PX) onClick();
    },
    cancel: () => {},
  };
}
