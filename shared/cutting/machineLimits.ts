// What a guillotine can hold: whether a part can be laid under the knife and clamped for one cut.
import type { SheetEdge } from '../geometry/sheet.ts';
import { within } from '../geometry/tolerance.ts';
import type { Cutter } from './cutter.ts';
import { areaOf, type CuttingGrid, type Part, placeOnSheet } from './cuttingGrid.ts';
import { dimensionOf } from './lie.ts';

/** From the edge at the back gauge to the line, in pt. */
export function gaugeDistance(field: CuttingGrid, part: Part, gauge: SheetEdge, line: number): number {
  const way = dimensionOf(gauge) === 'width' ? 'up' : 'across';
  return Math.abs(placeOnSheet(field, way, line) - placeOnSheet(field, way, part[gauge]));
}

/** How long the part is along the knife while this edge lies at the back gauge, in pt. */
export function alongKnife(field: CuttingGrid, part: Part, gauge: SheetEdge): number {
  const area = areaOf(field, part);
  return dimensionOf(gauge) === 'width' ? area.h : area.w;
}

/** Whether the cutter takes the part in this lie and holds it at this distance (pt). */
export function canHold(
  cutter: Cutter,
  field: CuttingGrid,
  part: Part,
  gauge: SheetEdge,
  distance: number,
): boolean {
  return (
    within(alongKnife(field, part, gauge), cutter.widest) &&
    within(distance, cutter.deepest) &&
    within(cutter.leastGauge, distance)
  );
}
