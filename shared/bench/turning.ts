// Turning by hand: an edge of the paper is taken and carried over to the other side, and the eye sees it in perspective.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Turn } from '../geometry/turn.ts';
import type { SheetAxis } from './axis.ts';

/** The turn that carrying this edge over makes. */
export function turnByEdge(edge: SheetEdge): Turn {
  return edge === 'left' || edge === 'right' ? 'side-to-side' : 'end-to-end';
}

/**
 * How far the paper has turned about its middle, in degrees from 0 (it lies) to 180 (it is turned). `grabbed` (> 0) is
 * how far from the axis it was taken, `hand` how far the hand is now, counted towards where it took it; both in one
 * unit. What was taken stays under the hand.
 */
export function angleOfDrag(grabbed: number, hand: number): number {
  const share = Math.max(-1, Math.min(1, hand / grabbed));
  return (Math.acos(share) * 180) / Math.PI;
}

/** Whether the side that lay up is still seen; from the upright paper on it is the other one. */
export function showsOther(angle: number): boolean {
  return angle >= 90;
}

/** What the paper does when it is let go at this angle: it falls to the nearer side. */
export function whereItFalls(angle: number): 'falls back' | 'turns over' {
  return showsOther(angle) ? 'turns over' : 'falls back';
}

/** How the eye sees a page of the turning paper: a point `p` of the axis that turns lands at scale * p / w(p). */
export interface Pose {
  readonly axis: SheetAxis;
  readonly scale: number;
  /** The depth w(p) = depth + tilt * p divides both coordinates. */
  readonly tilt: number;
  readonly depth: number;
}

export interface Grip {
  /** The axis along which the grabbed edge travels. */
  readonly axis: SheetAxis;
  /** Whether the edge was taken at the high end of that axis (1) or at the low end (-1). */
  readonly end: 1 | -1;
  /** How far from the middle it was taken. */
  readonly grabbed: number;
}

/**
 * How the page that lay up (`front`) or the one behind it is seen at an angle. Coordinates are counted from the
 * middle of the page, each page in its own frame. The eye is `eye` away from the plane on which the hand moves, so
 * that the taken point keeps its size and the far edge recedes.
 */
export function poseOf(page: 'front' | 'behind', angle: number, grip: Grip, eye: number): Pose {
  const turned = (angle * Math.PI) / 180;
  const rise = Math.sin(turned) / eye;
  const own = page === 'front' ? 1 : -1;
  return {
    axis: grip.axis,
    scale: own * Math.cos(turned),
    tilt: -own * grip.end * rise,
    depth: 1 + grip.grabbed * rise,
  };
}

/** Where a point of a page, counted from its middle, is seen. */
export function see(
  pose: Pose,
  point: { readonly x: number; readonly y: number },
): { readonly x: number; readonly y: number } {
  const w = pose.depth + pose.tilt * point[pose.axis];
  return pose.axis === 'x'
    ? { x: (pose.scale * point.x) / w, y: point.y / w }
    : { x: point.x / w, y: (pose.scale * point.y) / w };
}

/** The pose as the sixteen numbers of a 4 x 4 matrix, column by column, for a page whose origin is its middle. */
export function cssMatrixOf(pose: Pose): readonly number[] {
  const turns = [pose.scale, 0, 0, pose.tilt];
  const x = pose.axis === 'x' ? turns : [1, 0, 0, 0];
  const y = pose.axis === 'y' ? [0, pose.scale, 0, pose.tilt] : [0, 1, 0, 0];
  return [...x, ...y, 0, 0, 1, 0, 0, 0, 0, pose.depth];
}
