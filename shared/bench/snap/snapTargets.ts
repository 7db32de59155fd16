// All the places that a drag may be drawn to, worked out once when the piece is grabbed.
import { around } from '../../geometry/rect.ts';
import { usableArea } from '../../geometry/sheet.ts';
import { turnOf } from '../../geometry/work.ts';
import type { LaidSheet } from '../../layout/check.ts';
import type { Unit } from '../../units/length.ts';
import { AXES, mirroredAxis } from '../axis.ts';
import type { DraggedBox, Neighbour } from './dragged.ts';
import type { SnapTarget } from './guide.ts';
import { marginTargets } from './marginTargets.ts';
import { inLineTargets, neighbourTargets, partnerTargets } from './neighbourTargets.ts';
import { centreTarget, mirrorTargets, printableTargets } from './sheetTargets.ts';

/**
 * The targets for what is dragged among `others`, which are the pieces that neither move nor follow. `gutter` is in
 * pt; lengths are said in `unit`.
 */
export function snapTargets(
  dragged: DraggedBox,
  others: readonly Neighbour[],
  sheet: LaidSheet,
  gutter: number,
  unit: Unit,
): readonly SnapTarget[] {
  const turn = turnOf(sheet.work);
  const usable = usableArea(sheet.size, sheet.unprintable, turn);
  const resting = around(others.map((o) => o.trim));
  return AXES.flatMap((axis) => [
    ...(usable === undefined ? [] : printableTargets(axis, dragged, usable)),
    ...others.flatMap((o) => [
      ...neighbourTargets(axis, dragged, o, gutter, unit),
      ...inLineTargets(axis, dragged, o),
    ]),
    ...(turn === undefined || mirroredAxis(turn) !== axis
      ? [centreTarget(axis, dragged, sheet.size)]
      : [
          ...marginTargets(axis, dragged, resting, sheet.size),
          ...others.flatMap((o) => mirrorTargets(axis, dragged, o, sheet.size)),
          ...(dragged.partnered
            ? partnerTargets(axis, dragged, sheet.size, gutter, unit)
            : [centreTarget(axis, dragged, sheet.size)]),
        ]),
  ]);
}
