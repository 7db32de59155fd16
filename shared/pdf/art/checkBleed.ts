// Whether the art reaches far enough beyond its trim for the knife.
import { ok, type Result, refuse } from '../../fault/result.ts';
import type { Edges } from '../../geometry/space.ts';
import { showLength } from '../../units/show.ts';
import { type ArtPage, named } from './artPage.ts';
import { FIT_TOLERANCE_PT } from './fit.ts';

const EDGES = ['left', 'right', 'top', 'bottom'] as const;

/**
 * Passes the reach of the art on if it is as long as the brief's bleed (pt) on every edge, to within the fit of art
 * to brief; else refuses with `art-bleed-short`, naming the edges and how much there is.
 */
export function checkBleed(page: ArtPage, reach: Edges, bleed: number): Result<Edges> {
  const short = EDGES.filter((edge) => reach[edge] < bleed - FIT_TOLERANCE_PT);
  if (short.length === 0) return ok(reach);
  const wanted = inBoth(bleed);
  const none = short.every((edge) => reach[edge] <= FIT_TOLERANCE_PT);
  const everywhere = short.length === EDGES.length;
  const found = short.map((edge) => `${inBoth(Math.max(0, reach[edge]))} ${AT[edge]}`).join(', ');
  return refuse({
    code: 'art-bleed-short',
    message:
      none && everywhere
        ? `There is no bleed on ${named(page)}: it ends at the trim. The brief wants ${wanted} on every side.`
        : `The bleed of ${named(page)} is too short: ${found}. The brief wants ${wanted} on every side.`,
    remedy: `Export the page again with ${wanted} of bleed, or write a smaller "bleed" in the brief.`,
    where: page.art,
  });
}

/** Where an edge is, as the head is up. */
const AT: Readonly<Record<(typeof EDGES)[number], string>> = {
  left: 'at the left',
  right: 'at the right',
  top: 'at the head',
  bottom: 'at the foot',
};

function inBoth(pt: number): string {
  return `${showLength(pt, 'in')} (${showLength(pt, 'mm')})`;
}
