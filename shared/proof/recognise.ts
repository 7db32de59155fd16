// Recognising what lies at a position: every face that fits, every way round, seen small and moved about.
import { type Head, liesOnItsSide } from '../geometry/head.ts';
import { chain } from '../geometry/transform.ts';
import { POINTS_PER } from '../units/length.ts';
import { ROUNDING } from './band.ts';
import { type ArtFace, IN_PLACE, toMiddle } from './gallery.ts';
import type { Grid } from './grid.ts';
import { flipPicture, type Picture, turnPicture } from './picture.ts';
import { shrink } from './pyramid.ts';
import type { Found } from './settle.ts';
import { type Lens, ROTATED } from './sight.ts';

/** A face lying some way round: flipped left to right or not, then turned counter-clockwise. */
export interface Lie {
  readonly mirrored: boolean;
  readonly turned: Head;
}

/** A face that may lie at a position, how, about where, and how far it is from what was found (the less the better). */
export interface Candidate extends Lie {
  readonly face: ArtFace;
  readonly placed: Lens;
  readonly distance: number;
}

/** How far off its place a face is still recognised, in pt. */
const SEARCH = 10 * POINTS_PER.mm;

/** The longer side of the trim when seen small, in pixels at most. */
const SMALL = 48;

/** How much farther than the nearest a candidate may be (in squared differences) to be worth a closer look. */
const MUCH_FARTHER = 2;

/** All eight ways a face can lie, the likelier mistakes first. */
const LIES: readonly Lie[] = [false, true].flatMap((mirrored) =>
  ([0, 180, 90, 270] as const).map((turned) => ({ mirrored, turned })),
);

/**
 * The candidates that come near to what was found, the likeliest first: those that differ less, and of two that differ
 * as little the one nearer to its place and not mirrored. It is quickest when the likelier faces come first. `thumbs`
 * keeps the faces seen small.
 */
export function rankCandidates(
  found: Found,
  faces: readonly ArtFace[],
  thumbs: Map<ArtFace, Picture>,
): readonly Candidate[] {
  const { grid, picture } = found;
  const times = Math.max(0, Math.ceil(Math.log2(Math.max(grid.width, grid.height) / SMALL)));
  const small = { picture: shrink(picture, times), scale: 2 ** times, grid };
  const unseen = small.picture.pixels.length * ROUNDING ** 2;
  const candidates: Candidate[] = [];
  let worthwhile = Number.POSITIVE_INFINITY;
  for (const face of faces) {
    const thumb = thumbs.get(face) ?? seeSmall(face, grid, small.scale);
    thumbs.set(face, thumb);
    for (const lie of LIES) {
      const candidate = search(small, lay(thumb, lie), face, lie, worthwhile);
      if (candidate === undefined) continue;
      candidates.push(candidate);
      worthwhile = Math.min(worthwhile, candidate.distance * MUCH_FARTHER + unseen);
    }
  }
  const oddness = ({ distance, placed, mirrored }: Candidate) =>
    (distance + unseen) * (1 + Math.hypot(placed.e, placed.f) / SEARCH + (mirrored ? 0.5 : 0));
  return candidates.filter((c) => c.distance < worthwhile).sort((a, b) => oddness(a) - oddness(b));
}

/** What was found, seen small: pixels of the grid to one of its own. */
interface Small {
  readonly picture: Picture;
  readonly scale: number;
  readonly grid: Grid;
}

/** The face in the middle of a square that leaves room to move it about, whichever way it lies. */
function seeSmall(face: ArtFace, grid: Grid, scale: number): Picture {
  const { w, h } = face.trim;
  const side = 2 * Math.ceil(((Math.max(w, h) / 2 + searchFor(face, 90)) * grid.across) / scale + 2);
  const finer = 2 / scale;
  const lens: Lens = { ...IN_PLACE, a: grid.across * finer, d: -grid.up * finer, e: side, f: side };
  return shrink(face.sight.photograph(chain(toMiddle(face), lens), 2 * side, 2 * side), 1);
}

function lay(thumb: Picture, { mirrored, turned }: Lie): Picture {
  return turnPicture(mirrored ? flipPicture(thumb, 'left-right') : thumb, turned);
}

/** How far a face may be off, in pt; on its side in a trim that is not square, it may be laid into either end. */
function searchFor({ trim }: ArtFace, turned: Head): number {
  const search = Math.min(SEARCH, Math.min(trim.w, trim.h) / 4);
  return liesOnItsSide(turned) ? search + Math.abs(trim.w - trim.h) / 2 : search;
}

/** Moves the thumb about over what was found, and keeps where it differs least, if that is worthwhile anywhere. */
function search(
  small: Small,
  thumb: Picture,
  face: ArtFace,
  lie: Lie,
  worthwhile: number,
): Candidate | undefined {
  const { picture, scale, grid } = small;
  const offX = thumb.width / 2 - (grid.width / 2 + grid.margin) / scale;
  const offY = thumb.height / 2 - (grid.height / 2 + grid.margin) / scale;
  const reach = Math.floor((searchFor(face, lie.turned) * grid.across) / scale);
  let best = { distance: worthwhile, dx: 0, dy: 0 };
  for (const dx of outwards(reach)) {
    for (const dy of outwards(reach)) {
      const fromX = Math.round(offX) - dx;
      const fromY = Math.round(offY) - dy;
      const distance = distanceAt(
        picture,
        thumb,
        fromX,
        fromY,
        Math.ceil(grid.margin / scale),
        best.distance,
      );
      if (distance < best.distance) best = { distance, dx: offX - fromX, dy: offY - fromY };
    }
  }
  if (best.distance === worthwhile) return undefined;
  const at: Lens = {
    ...IN_PLACE,
    e: (best.dx * scale) / grid.across,
    f: (-best.dy * scale) / grid.up,
  };
  const placed = chain(chain(lie.mirrored ? { ...IN_PLACE, a: -1 } : IN_PLACE, ROTATED[lie.turned]), at);
  return { face, ...lie, placed, distance: best.distance };
}

/** 0, 1, -1, 2, -2 and so on to `reach`: of equal places the nearest is kept. */
function outwards(reach: number): readonly number[] {
  return Array.from({ length: 2 * reach + 1 }, (_, i) => (i % 2 === 1 ? (i + 1) / 2 : -i / 2));
}

/** The sum of squared differences inside the margin, given up once it passes `enough`. */
function distanceAt(
  picture: Picture,
  thumb: Picture,
  fromX: number,
  fromY: number,
  margin: number,
  enough: number,
): number {
  let sum = 0;
  for (let y = margin; y < picture.height - margin && sum < enough; y++) {
    const other = ((y + fromY) * thumb.width + fromX) * 3;
    for (let x = margin * 3; x < (picture.width - margin) * 3; x++) {
      const difference = (picture.pixels[y * picture.width * 3 + x] ?? 0) - (thumb.pixels[other + x] ?? 0);
      sum += difference * difference;
    }
  }
  return sum;
}
