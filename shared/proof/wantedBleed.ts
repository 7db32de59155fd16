// How far the bleed of each position has to reach: as far as the layout has room for it, and the sheet.
import { intersection, wholeOf } from '../geometry/rect.ts';
import type { Size } from '../geometry/space.ts';
import type { Bleeding } from '../layout/bleeding.ts';
import { type Reaches, reachAlong } from '../layout/bleedReach.ts';
import { bleedAreas } from '../layout/bleeds.ts';

/** The bleed that must be seen around each of them, in pt, on side 1. It ends at the edge of the sheet. */
export function wantedBleeds(placed: readonly Bleeding<'side1'>[], sheet: Size): readonly Reaches[] {
  const whole = wholeOf<'side1'>(sheet);
  return bleedAreas(placed).map((area, i) => {
    const trim = placed[i]?.trim ?? whole;
    return reachAlong(
      trim,
      area.flatMap((rect) => intersection(rect, whole) ?? []),
    );
  });
}
