// How a recognised face lies: off its place, out of scale, askew, and how far its bleed reaches.
import type { Edges } from '../geometry/space.ts';
import { POINTS_PER } from '../units/length.ts';
import { EDGES } from './edges.ts';
import type { Fault, Reach, Shift } from './finding.ts';
import { type Look, sheetEdge } from './looks.ts';
import { reachOf } from './reach.ts';
import { type Found, OUT_OF_PLACE, type Settled } from './settle.ts';
import type { Lens } from './sight.ts';

/** Lengths are measured to this many to the millimetre. */
const PARTS = 100;

/** How far a face that is printed at `placed` is from its place. */
export function shiftOf(look: Look, placed: Lens): Shift {
  const { x, y } = look.onSide({ x: placed.e, y: placed.f });
  return { right: inMillimetres(x), lead: inMillimetres(y) };
}

/**
 * Whether an upright face is off its place, out of scale or askew. Scale and slant count by what they do at the edges
 * of the trim, and hide the shift that they bring along.
 */
export function placingFaults(look: Look, placed: Lens, shift: Shift | undefined): readonly Fault[] {
  const { w, h } = look.piece.trim;
  const across = Math.hypot(placed.a, placed.b);
  const up = Math.hypot(placed.c, placed.d);
  const slopes = [Math.atan2(placed.b, placed.a), Math.atan2(-placed.c, placed.d)];
  const slope = slopes.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
  const faults: Fault[] = [];
  if (isOut(((across - 1) * w) / 2, ((up - 1) * h) / 2)) {
    faults.push({ kind: 'wrong-scale', measured: { across: toParts(across * 100), up: toParts(up * 100) } });
  }
  if (isOut((slope * Math.max(w, h)) / 2)) {
    faults.push({ kind: 'askew', measured: { degrees: toParts((slope * 180) / Math.PI) } });
  }
  if (faults.length > 0 || shift === undefined) return faults;
  return toParts(Math.hypot(shift.right, shift.lead)) < OUT_OF_PLACE
    ? []
    : [{ kind: 'off-place', measured: shift }];
}

/** Whether any of these lengths (pt) is out of place. */
function isOut(...lengths: readonly number[]): boolean {
  return lengths.some((length) => Math.abs(inMillimetres(length)) >= OUT_OF_PLACE);
}

/**
 * How far the bleed reaches at each edge that should have one, and where it falls short: told of the stretch of the edge
 * that lacks most.
 */
export function bleedOf(
  look: Look,
  found: Found,
  { picture, placed }: Settled,
): { readonly bleed: readonly Reach[]; readonly faults: readonly Fault[] } {
  const shifted = Math.max(Math.abs(placed.e), Math.abs(placed.f));
  const reached = reachOf(found, picture, look.wanted, shifted);
  // A piece that is off its place takes its bleed along: what that costs at an edge is the shift's fault.
  const inward: Edges = { left: placed.e, right: -placed.e, bottom: placed.f, top: -placed.f };
  const bleed: Reach[] = [];
  const faults: Fault[] = [];
  for (const edge of EDGES) {
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

/** A length in pt, in mm as it is told. */
export function inMillimetres(pt: number): number {
  return toParts(pt / POINTS_PER.mm);
}

function toParts(value: number): number {
  const rounded = Math.round(value * PARTS) / PARTS;
  return rounded === 0 ? 0 : rounded;
}
