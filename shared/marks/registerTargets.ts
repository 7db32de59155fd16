// Register targets: a ring and a cross in the middle of each margin, the same ones seen from both sides of the sheet.
import { centre } from '../geometry/rect.ts';
import { registerEdges } from '../geometry/register.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Rect, Size, Space } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { applyToRect, type Transform } from '../geometry/transform.ts';
import { lookFromBehind, type Turn } from '../geometry/turn.ts';
import { POINTS_PER } from '../units/length.ts';
import { HAIRLINE_PT, type MirrorMark } from './mark.ts';
import { findRoom } from './room.ts';

/** Across the whole target, in pt: 6 mm, or 4 mm where the margin is narrow. */
const SIZES = [6 * POINTS_PER.mm, 4 * POINTS_PER.mm];

/** The ring's radius as a share of the target. */
const RING_SHARE = 0.3;

/** Halfway between the bleeds and the edge of what can be printed. */
const HALFWAY = { x: 0.5, y: 0.5 };

export interface RegisterTargets {
  readonly marks: readonly MirrorMark[];
  /** The edges of the sheet whose margin had no room for one. */
  readonly bare: readonly SheetEdge[];
}

/**
 * Targets on the two middle axes of the sheet, one in each margin that has room; a target on a middle axis is on that
 * axis from behind too.
 *
 * Where one form serves both passes, `foldsOn` is its turn, and `taken` and the margins fall on themselves: then every
 * target stands together with its mirror image, so that the second pass prints its targets behind those of the first.
 *
 * @source Common practice, no source: a ring and a cross in hairlines, in the middle of the margins.
 */
export function registerTargets(
  sheet: Size,
  margins: Readonly<Record<SheetEdge, Rect>>,
  taken: readonly Rect[],
  foldsOn: Turn | undefined,
): RegisterTargets {
  const fold =
    foldsOn === undefined ? undefined : (lookFromBehind(foldsOn, sheet) as Transform<Space, Space>);
  const foldedAway = foldsOn === undefined ? undefined : registerEdges(foldsOn)[1];
  const rooms: Rect[] = [];
  const bare: SheetEdge[] = [];
  for (const edge of ['lead', 'tail', 'left', 'right'] as const) {
    if (edge === foldedAway) continue;
    const room = findTarget(sheet, edge, margins[edge], taken);
    if (room === undefined) {
      bare.push(edge);
      continue;
    }
    rooms.push(room);
    const partner = fold === undefined ? room : applyToRect(fold, room);
    if (!same(partner.x, room.x) || !same(partner.y, room.y)) rooms.push(partner);
  }
  if (foldsOn !== undefined && foldedAway !== undefined && bare.includes(registerEdges(foldsOn)[0])) {
    bare.push(foldedAway);
  }
  return { marks: rooms.flatMap(drawTarget), bare };
}

/** Room for a target on the middle axis that crosses this margin, the larger target first. */
function findTarget(sheet: Size, edge: SheetEdge, margin: Rect, taken: readonly Rect[]): Rect | undefined {
  for (const size of SIZES) {
    const lane =
      edge === 'lead' || edge === 'tail'
        ? { ...margin, x: (sheet.w - size) / 2, w: size }
        : { ...margin, y: (sheet.h - size) / 2, h: size };
    const room = findRoom(lane, { w: size, h: size }, taken, HALFWAY);
    if (room !== undefined) return room;
  }
  return undefined;
}

function drawTarget(room: Rect): readonly MirrorMark[] {
  const { x, y } = centre(room);
  const stroke = { width: HAIRLINE_PT, ink: 'registration' } as const;
  return [
    { kind: 'ring', centre: { x, y }, radius: RING_SHARE * room.w, ...stroke },
    { kind: 'line', from: { x: room.x, y }, to: { x: room.x + room.w, y }, ...stroke },
    { kind: 'line', from: { x, y: room.y }, to: { x, y: room.y + room.h }, ...stroke },
  ];
}
