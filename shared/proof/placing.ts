// How a recognised face lies: off its place, out of scale, askew, and how far its bleed reaches.
import type { Edges } from '../geometry/space.ts';
import { POINTS_PER } from '../units/length.ts';
import { type FaceAlignment, type Found, MIN_OFF_PLACE_MM } from './alignment.ts';
import { FACE_EDGES } from './edges.ts';
import { type FaceView, sheetEdge } from './faceViews.ts';
import type { FaceFault, FaceShift, Reach } from './finding.ts';
import type { Affine } from './pageSource.ts';
import { reachOf } from './reach.ts';

/** Lengths are measured to this many to the millimetre. */
const PARTS_PER_MM = 100;

/** How far a face that is printed at `placed` is from its place. */
export function shiftOf(look: FaceView, placed: Affine): FaceShift {
  const { x, y } = look.onSide({ x: placed.e, y: placed.f });
  return { right: inMillimetres(x), lead: inMillimetres(y) };
}

/**
 * Whether an upright face is off its place, out of scale or askew. Scale and slant count by what they do at the edges
 * of the trim, and hide the shift that they bring along.
 */
export function placingFaults(
  look: FaceView,
  placed: Affine,
  shift: FaceShift | undefined,
): readonly FaceFault[] {
  const { w, h } = look.piece.trim;
  const across = Math.hypot(placed.a, placed.b);
  const up = Math.hypot(placed.c, placed.d);
  const slopes = [Math.atan2(placed.b, placed.a), Math.atan2(-placed.c, placed.d)];
  const slope = slopes.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
  const faults: FaceFault[] = [];
  if (isOut(((across - 1) * w) / 2, ((up - 1) * h) / 2)) {
    faults.push({ kind: 'wrong-scale', measured: { across: toParts(across * 100), up: toParts(up * 100) } });
  }
  if (isOut((slope * Math.max(w, h)) / 2)) {
    faults.push({ kind: 'askew', measured: { degrees: toParts((slope * 180) / Math.PI) } });
  }
  if (faults.length > 0 || shift === undefined) return faults;
  return toParts(Math.hypot(shift.right, shift.lead)) < MIN_OFF_PLACE_MM
    ? []
    : [{ kind: 'off-place', measured: shift }];
}

/** Whether any of these lengths (pt) is out of place. */
function isOut(...lengths: readonly number[]): boolean {
  return lengths.some((length) => Math.abs(inMillimetres(length)) >= MIN_OFF_PLACE_MM);
}

/**
 * How far the bleed reaches at each edge that should have one, and where it falls short: measured at the stretch of the
 * edge that lacks most.
 */
export function bleedOf(
  look: FaceView,
  found: Found,
  { picture, placed }: FaceAlignment,
): { readonly bleed: readonly Reach[]; readonly faults: readonly FaceFault[] } {
  const shifted = Math.max(Math.abs(placed.e), Math.abs(placed.f));
  const reached = reachOf(found, picture, look.wanted, shifted);
  // A piece that is off its place takes its bleed along: what that costs at an edge is the shift's fault.
  const inward: Edges = { left: placed.e, right: -placed.e, bottom: placed.f, top: -placed.f };
  const bleed: Reach[] = [];
  const faults: FaceFault[] = [];
  for (const edge of FACE_EDGES) {
    const worst = reached[edge].toSorted((a, b) => b.wanted - b.reaches - (a.wanted - a.reaches))[0];
    if (worst === undefined) continue;
    const measured: Reach = {
      edge: sheetEdge(look, edge),
      reaches: inMillimetres(worst.reaches),
      wanted: inMillimetres(worst.wanted),
    };
    bleed.push(measured);
    if (isOut(Math.max(0, worst.wanted - worst.reaches - Math.max(0, inward[edge])))) {
      faults.push({ kind: 'bleed-short', measured });
    }
  }
  return { bleed, faults };
}

/** A length in pt, in mm as findings give it. */
export function inMillimetres(pt: number): number {
  return toParts(pt / POINTS_PER.mm);
}

function toParts(value: number): number {
  const rounded = Math.round(value * PARTS_PER_MM) / PARTS_PER_MM;
  return rounded === 0 ? 0 : rounded;
}
