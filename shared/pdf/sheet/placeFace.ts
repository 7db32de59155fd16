// One placed face on a sheet: its shared form, turned by its head, and cut off where its gutter is too narrow.
import type { PDFRef } from 'pdf-lib';
import { type Head, liesOnItsSide } from '../../geometry/head.ts';
import { layInto } from '../../geometry/lie.ts';
import { growEdges, holds } from '../../geometry/rect.ts';
import type { Edges } from '../../geometry/space.ts';
import type { Placement } from '../../layout/placement.ts';
import { clipTo, drawThrough } from './operators.ts';

/** The art of a face, made ready: a form with its head up and its lower left at the origin. */
export interface PlacedFace {
  readonly form: PDFRef;
  /** How far the form reaches beyond the trim, in pt, head up. */
  readonly bleed: Edges;
}

/** The operators that print a face where its placement says; `name` is what the page's resources call its form. */
export function drawFace(placement: Placement, bleed: Edges, name: string): string {
  const lies = growEdges(placement.trim, turnEdges(bleed, placement.head));
  const clip = placement.bleed.some((area) => holds(area, lies)) ? [] : [clipTo(placement.bleed)];
  return ['q', ...clip, drawThrough(layInto(lies, placement.head)), `/${name} Do`, 'Q'].join(' ');
}

/** The edges of something upright as they lie once its head is turned. */
function turnEdges(e: Edges, head: Head): Edges {
  const turned = liesOnItsSide(head) ? { left: e.top, right: e.bottom, top: e.right, bottom: e.left } : e;
  return head === 0 || head === 90
    ? turned
    : { left: turned.right, right: turned.left, top: turned.bottom, bottom: turned.top };
}
