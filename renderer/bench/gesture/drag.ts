// Dragging pieces: from where the hand took them to where it lets them go, with the snap that holds them on the way.
import { keepWithin, lengthAlong, mirroredAxis, type Span, spanOf } from '../../../shared/bench/axis.ts';
import type { Guide, SnapTarget } from '../../../shared/bench/snap/guide.ts';
import { snap } from '../../../shared/bench/snap/snap.ts';
import { snapTargets } from '../../../shared/bench/snap/snapTargets.ts';
import { around, centre, grow, shift, wholeOf } from '../../../shared/geometry/rect.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import { TOLERANCE } from '../../../shared/geometry/tolerance.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import type { Command } from '../../../shared/job/commands.ts';
import { edit } from '../../../shared/job/edit.ts';
import { designsOf, type Job, sheetOf, usableOf } from '../../../shared/job/job.ts';
import { leadersOf, partnerIndex } from '../../../shared/job/partners.ts';
import { designNamed } from '../../../shared/layout/forms.ts';
import { points } from '../../../shared/units/length.ts';

/** A drag that has begun. Lengths in pt, as the arrangement counts. */
export interface Drag {
  readonly job: Job;
  /** The positions that the hand moves, the grabbed one first. */
  readonly leaders: readonly number[];
  /** All positions that move: the leaders, and the partners that follow them. */
  readonly moving: readonly number[];
  /** The trims of the leaders together, where they were taken. */
  readonly box: Rect<'side1'>;
  /** Where the trims together stop when the hand lets the bench guide them, and where they stop in any case. */
  readonly printed: Rect<'side1'>;
  readonly sheet: Rect<'side1'>;
  readonly targets: readonly SnapTarget[];
}

/** A drag as it stands. */
export interface DragState {
  readonly guides: readonly Guide[];
  /** Where the trims of the leaders together lie now. */
  readonly box: Rect<'side1'>;
  /** The edit that letting go would make; none while nothing has moved. */
  readonly command: Command | undefined;
  /** The job with that edit made. */
  readonly job: Job;
}

/** Begins to drag the chosen positions, one of which was grabbed. `undefined` where there is no such position. */
export function beginDrag(job: Job, chosen: readonly number[], grabbed: number): Drag | undefined {
  const leaders = leadersOf(job, [grabbed, ...likeGrabbed(job, chosen, grabbed)]);
  const positions = leaders.flatMap((i) => job.arrangement[i] ?? []);
  const box = around(positions.map((p) => p.trim));
  if (box === undefined) return undefined;
  const partners = positions.flatMap((p) => partnerIndex(job, p) ?? []);
  const moving = [...new Set([...leaders, ...partners])];
  const others = job.arrangement.flatMap(({ trim }, i) =>
    moving.includes(i) ? [] : [{ trim, name: `position ${i + 1}` }],
  );
  const designs = designsOf(job.brief);
  const dragged = {
    size: { w: box.w, h: box.h },
    bleed: Math.max(...positions.map((p) => designNamed(designs, p.piece).bleed)),
    partnered: partners.length > 0,
  };
  const laid = { ...sheetOf(job.brief), work: job.brief.work };
  const sheet = wholeOf<'side1'>(laid.size);
  const printed = printedRoom(job, dragged.bleed, box);
  const targets = snapTargets(dragged, others, laid, points(job.brief.gutter), job.brief.units).filter((t) =>
    isWithin(spanOf(printed, t.axis), t.at, lengthAlong(dragged.size, t.axis)),
  );
  return { job, leaders, moving, box, printed, sheet, targets };
}

/** Where trims lie with their bleed printed on both sides; where they lie beyond it already, as far as there. */
function printedRoom(job: Job, bleed: number, box: Rect<'side1'>): Rect<'side1'> {
  const usable = usableOf(job.brief);
  return around([box, ...(usable === undefined ? [] : [grow(usable, -bleed)])]) ?? box;
}

function isWithin(room: Span, at: number, length: number): boolean {
  return at >= room.from - TOLERANCE && at + length <= room.to + TOLERANCE;
}

/** The chosen positions, those on the grabbed one's half of the sheet first: of a piece and its partner they lead. */
function likeGrabbed(job: Job, chosen: readonly number[], grabbed: number): readonly number[] {
  const turn = turnOf(job.brief.work);
  const axis = mirroredAxis(turn ?? 'side-to-side');
  const middle = lengthAlong(sheetOf(job.brief).size, axis) / 2;
  const half = (index: number) => {
    const trim = job.arrangement[index]?.trim;
    return trim === undefined ? 0 : Math.sign(centre(trim)[axis] - middle);
  };
  const other = (index: number) => Number(half(index) !== half(grabbed));
  return [...chosen].sort((a, b) => other(a) - other(b));
}

/**
 * The drag when the hand has moved by (dx, dy) pt. What is dragged is drawn to targets within `reach` pt and stops where
 * its bleed would no longer be printed; with a `reach` of 0 it goes freely, to the edges of the sheet.
 */
export function dragBy(drag: Drag, dx: number, dy: number, reach: number): DragState {
  const { box, job, leaders } = drag;
  const room = reach > 0 ? drag.printed : drag.sheet;
  const hand = keepIn(room, shift(box, dx, dy));
  const held = reach > 0 ? snap(hand, drag.targets, reach) : { dx: 0, dy: 0, guides: [] };
  const snapped = shift(hand, held.dx, held.dy);
  const placed = keepIn(room, snapped);
  const guides = held.guides.filter((g) => placed[g.axis] === snapped[g.axis]);
  const command: Command = { do: 'move', positions: leaders, dx: placed.x - box.x, dy: placed.y - box.y };
  if (command.dx === 0 && command.dy === 0) return { guides, box: placed, command: undefined, job };
  const moved = edit(job, command);
  return moved.ok
    ? { guides, box: placed, command, job: moved.value }
    : { guides: [], box, command: undefined, job };
}

function keepIn(room: Rect<'side1'>, at: Rect<'side1'>): Rect<'side1'> {
  return {
    ...at,
    x: keepWithin(spanOf(room, 'x'), at.x, at.w),
    y: keepWithin(spanOf(room, 'y'), at.y, at.h),
  };
}
