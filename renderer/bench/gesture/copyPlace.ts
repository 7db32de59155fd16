// Where a copy of some pieces is put: a gutter away on the side where there is room, else a little aside.

import type { PieceShift } from '../../../shared/bench/align.ts';
import { around, holds, overlap, shift } from '../../../shared/geometry/rect.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import { type Job, sheetOf, usableOf } from '../../../shared/job/job.ts';
import { leadersOf, mirrorOf } from '../../../shared/job/partners.ts';
import { points } from '../../../shared/units/length.ts';

/** A little aside, in pt: a quarter of an inch. */
const COPY_OFFSET_PT = 18;

/** How far the copy of the chosen positions lies from them, in pt as the arrangement counts. */
export function copyPlace(job: Job, chosen: readonly number[]): PieceShift {
  const positions = leadersOf(job, chosen).flatMap((i) => job.arrangement[i] ?? []);
  const box = around(positions.map((p) => p.trim));
  const { size } = sheetOf(job.brief);
  const usable = usableOf(job.brief);
  if (box === undefined || usable === undefined) return { dx: 0, dy: 0 };
  const gutter = points(job.brief.gutter);
  const [across, along] = [box.w + gutter, box.h + gutter];
  const ways: readonly PieceShift[] = [
    { dx: across, dy: 0 },
    { dx: 0, dy: -along },
    { dx: 0, dy: along },
    { dx: -across, dy: 0 },
  ];
  const isFree = (by: PieceShift) => {
    const copies = positions.map((p) => ({ ...p, trim: shift(p.trim, by.dx, by.dy) }));
    const taken: readonly Rect<'side1'>[] = job.arrangement.map((p) => p.trim);
    const mirrors = copies.flatMap((p) => mirrorOf(job, p)?.trim ?? []);
    return copies.every(
      ({ trim }) => holds(usable, trim) && ![...taken, ...mirrors].some((other) => overlap(trim, other)),
    );
  };
  const aside = {
    dx: box.x + box.w + COPY_OFFSET_PT <= size.w ? COPY_OFFSET_PT : -Math.min(COPY_OFFSET_PT, box.x),
    dy: box.y - COPY_OFFSET_PT >= 0 ? -COPY_OFFSET_PT : Math.min(COPY_OFFSET_PT, size.h - box.y - box.h),
  };
  return ways.find(isFree) ?? aside;
}
