// Recognising what lies at a position: every face that fits, every way round, as a thumbnail that is moved about.
import { type Head, liesOnItsSide } from '../geometry/head.ts';
import { chain } from '../geometry/transform.ts';
import { POINTS_PER } from '../units/length.ts';
import type { Found } from './alignment.ts';
import { type ArtFace, IDENTITY, toTrimCentre } from './artFaces.ts';
import { ROUNDING_LEVELS } from './band.ts';
import type { PixelGrid } from './grid.ts';
import { type Affine, QUARTER_TURNS } from './pageSource.ts';
import { flipPicture, type Picture, turnPicture } from './picture.ts';
import { shrink } from './pyramid.ts';

/** A face lying some way round: flipped left to right or not, then turned counter-clockwise. */
export interface Orientation {
  readonly mirrored: boolean;
  readonly turned: Head;
}

/** A face that may lie at a position, how, about where, and how far it is from what was found (the less the better). */
export interface FaceCandidate extends Orientation {
  readonly face: ArtFace;
  readonly placed: Affine;
  readonly distance: number;
}

/** How far off its place a face is still recognised, in pt. */
const SEARCH_RADIUS_PT = 10 * POINTS_PER.mm;

/** The longer side of the trim in a thumbnail, in pixels at most. */
const THUMBNAIL_SIDE_PX = 48;

/** How much farther than the nearest a candidate may be (in squared differences) to be worth a closer look. */
const MAX_DISTANCE_RATIO = 2;

/** All eight ways a face can lie, the likelier mistakes first. */
const ORIENTATIONS: readonly Orientation[] = [false, true].flatMap((mirrored) =>
  ([0, 180, 90, 270] as const).map((turned) => ({ mirrored, turned })),
);

/**
 * The candidates that come near to what was found, the likeliest first: those that differ less, and of two that differ
 * as little the one nearer to its place and not mirrored. It is quickest when the likelier faces come first. `thumbnails`
 * keeps those of the faces.
 */
export function rankCandidates(
  found: Found,
  faces: readonly ArtFace[],
  thumbnails: Map<ArtFace, Picture>,
): readonly FaceCandidate[] {
  const { grid, picture } = found;
  const times = Math.max(0, Math.ceil(Math.log2(Math.max(grid.width, grid.height) / THUMBNAIL_SIDE_PX)));
  const small = { picture: shrink(picture, times), scale: 2 ** times, grid };
  const noise = small.picture.pixels.length * ROUNDING_LEVELS ** 2;
  const candidates: FaceCandidate[] = [];
  let maxDistance = Number.POSITIVE_INFINITY;
  for (const face of faces) {
    const thumb = thumbnails.get(face) ?? thumbnailOf(face, grid, small.scale);
    thumbnails.set(face, thumb);
    for (const orientation of ORIENTATIONS) {
      const candidate = search(small, orient(thumb, orientation), face, orientation, maxDistance);
      if (candidate === undefined) continue;
      candidates.push(candidate);
      maxDistance = Math.min(maxDistance, candidate.distance * MAX_DISTANCE_RATIO + noise);
    }
  }
  const rank = ({ distance, placed, mirrored }: FaceCandidate) =>
    (distance + noise) * (1 + Math.hypot(placed.e, placed.f) / SEARCH_RADIUS_PT + (mirrored ? 0.5 : 0));
  return candidates.filter((c) => c.distance < maxDistance).sort((a, b) => rank(a) - rank(b));
}

/** What was found, as a thumbnail: pixels of the grid to one of its own. */
interface FoundThumbnail {
  readonly picture: Picture;
  readonly scale: number;
  readonly grid: PixelGrid;
}

/** The face in the middle of a square that leaves room to move it about, whichever way it lies. */
function thumbnailOf(face: ArtFace, grid: PixelGrid, scale: number): Picture {
  const { w, h } = face.trim;
  const side = 2 * Math.ceil(((Math.max(w, h) / 2 + searchRadius(face, 90)) * grid.across) / scale + 2);
  const finer = 2 / scale;
  const matrix: Affine = { ...IDENTITY, a: grid.across * finer, d: -grid.up * finer, e: side, f: side };
  return shrink(face.source.render(chain(toTrimCentre(face), matrix), 2 * side, 2 * side), 1);
}

function orient(thumb: Picture, { mirrored, turned }: Orientation): Picture {
  return turnPicture(mirrored ? flipPicture(thumb, 'left-right') : thumb, turned);
}

/** How far a face may be off, in pt; on its side in a trim that is not square, it may be laid into either end. */
function searchRadius({ trim }: ArtFace, turned: Head): number {
  const search = Math.min(SEARCH_RADIUS_PT, Math.min(trim.w, trim.h) / 4);
  return liesOnItsSide(turned) ? search + Math.abs(trim.w - trim.h) / 2 : search;
}

/** Moves the thumb about over what was found, and keeps where it differs least, if that is worthwhile anywhere. */
function search(
  small: FoundThumbnail,
  thumb: Picture,
  face: ArtFace,
  orientation: Orientation,
  maxDistance: number,
): FaceCandidate | undefined {
  const { picture, scale, grid } = small;
  const offX = thumb.width / 2 - (grid.width / 2 + grid.margin) / scale;
  const offY = thumb.height / 2 - (grid.height / 2 + grid.margin) / scale;
  const reach = Math.floor((searchRadius(face, orientation.turned) * grid.across) / scale);
  let best = { distance: maxDistance, dx: 0, dy: 0 };
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
  if (best.distance === maxDistance) return undefined;
  const at: Affine = {
    ...IDENTITY,
    e: (best.dx * scale) / grid.across,
    f: (-best.dy * scale) / grid.up,
  };
  const placed = chain(
    chain(orientation.mirrored ? { ...IDENTITY, a: -1 } : IDENTITY, QUARTER_TURNS[orientation.turned]),
    at,
  );
  return { face, ...orientation, placed, distance: best.distance };
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
