// Aligning a face with what was found: the art is rendered about where it should be, and registered until both coincide.
import type { Head } from '../geometry/head.ts';
import { intersection } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { applyToRect, chain } from '../geometry/transform.ts';
import { POINTS_PER } from '../units/length.ts';
import { type ArtFace, renderFace } from './artFaces.ts';
import { blur, correlation, countOutliers, type PixelArea, squaredDifference, unmovedIn } from './band.ts';
import { type Displacement, largestMove } from './displacement.ts';
import { type PixelGrid, pieceToPicture } from './grid.ts';
import type { Affine } from './pageSource.ts';
import type { Picture } from './picture.ts';
import { type MotionModel, registerPicture } from './registration.ts';

/** From this many millimetres on, something is out of place. */
export const MIN_OFF_PLACE_MM = 0.25;

/** What was found at a position, in the hand: the face to be read, upright. */
export interface Found {
  readonly picture: Picture;
  /** The same blurred, made when it is first needed. */
  readonly blurred: () => Picture;
  readonly grid: PixelGrid;
  /** How the picture lay on the sheet: it was turned counter-clockwise by this much to be upright. */
  readonly lie: Head;
  /** The trim and as much bleed as has to be seen, in pt from the middle of the trim. */
  readonly printed: Rect<'piece'>;
}

/** How well a face was aligned with what was found. */
export interface FaceAlignment {
  /** Where the face is printed, if it is this face. */
  readonly placed: Affine;
  /** The art, rendered there. */
  readonly picture: Picture;
  /** What can be compared: the trim, as far as the art reaches when it is printed there. */
  readonly area: PixelArea;
  /** Whether the two show the same. */
  readonly agrees: boolean;
}

/**
 * Renderings with fewer outliers than this show the same, as far as renderings can show it: at 150 to the inch they are
 * 0.17 square millimetres. Small type is compared pixel by pixel (pixelComparison.ts).
 */
export const MIN_RENDERED_OUTLIERS = 6;

const MAX_ROUNDS = 4;
/** Two pictures whose correlation is less than this after the first move will not meet by moving on. */
const MIN_CORRELATION = 0.5;
/** Moving by fewer pixels than this does not change the picture. */
const CONVERGED_PX = 0.03;
/** The least share of the trim that must be in view for an agreement: an even ground agrees with any other. */
const MIN_SHARE_IN_VIEW = 0.4;

/**
 * Renders the face at `initial` and registers it, round after round, until it coincides with what was found.
 * `first` is the rendering at `initial` where there is one already.
 */
export function alignFace(
  found: Found,
  face: ArtFace,
  initial: Affine,
  model: MotionModel,
  first?: Picture,
): FaceAlignment {
  let placed = initial;
  let picture = first ?? renderFace(face, placed, found.grid, found.lie);
  let agrees = false;
  for (let round = 1; ; round++) {
    const area = areaInView(found, placed);
    if (!enoughInView(found.grid, area)) return { placed, picture, area, agrees: false };
    if (unmovedIn(found.picture, picture, area)) {
      return { placed, picture, area, agrees: agree(found, picture, area) };
    }
    // A renderer may draw a pattern so unevenly that it agrees where it is but not quite where it fits best.
    agrees ||= agree(found, picture, area);
    const alignment: FaceAlignment = { placed, picture, area, agrees };
    if (round === 2 && correlation(found.picture, picture, area) < MIN_CORRELATION) return alignment;
    const { displacement, observableDirections } = registerPicture(found.picture, picture, area, model);
    if (
      round === MAX_ROUNDS ||
      observableDirections === 0 ||
      largestMove(displacement, found.grid.width / 2, found.grid.height / 2) < CONVERGED_PX
    ) {
      return alignment;
    }
    placed = chain(placed, affineOf(displacement, found.grid));
    picture = renderFace(face, placed, found.grid, found.lie);
  }
}

/**
 * The same face also turned, scaled and slanted, where that moves the edges of the trim out of their place and explains
 * most of what differed; else as it was. A small scale alone would pass for edges that wander.
 */
export function refineAffine(found: Found, face: ArtFace, shifted: FaceAlignment): FaceAlignment {
  const { picture, area, placed } = shifted;
  if (unmovedIn(found.picture, picture, area)) return shifted;
  const { displacement, observableDirections } = registerPicture(found.picture, picture, area, 'affine');
  const { grid } = found;
  const atEdges = largestMove({ ...displacement, dx: 0, dy: 0 }, grid.width / 2, grid.height / 2);
  if (observableDirections < 2 || atEdges < MIN_OFF_PLACE_MM * POINTS_PER.mm * Math.min(grid.across, grid.up))
    return shifted;
  const affine = alignFace(found, face, placed, 'affine');
  const before = squaredDifference(found.picture, picture, area);
  return affine.agrees && squaredDifference(found.picture, affine.picture, area) < before / 2
    ? affine
    : shifted;
}

/**
 * Whether what was found agrees with a picture of the art, edges that wander by a pixel forgiven: as they are, or else
 * blurred, which lets thin lines meet halfway.
 */
function agree(found: Found, picture: Picture, area: PixelArea): boolean {
  const few = (a: Picture, b: Picture) =>
    countOutliers(a, b, area, MIN_RENDERED_OUTLIERS) < MIN_RENDERED_OUTLIERS;
  return few(found.picture, picture) || few(found.blurred(), blur(picture));
}

/** The pixels of the trim that show art when it is printed at `placed`, without the outermost. */
export function areaInView(found: Found, placed: Affine): PixelArea {
  const { grid } = found;
  const whole: Rect = { x: grid.margin, y: grid.margin, w: grid.width, h: grid.height };
  const art: Rect = applyToRect(chain(placed, pieceToPicture(grid)), found.printed);
  const seen = intersection(whole, art) ?? { x: 0, y: 0, w: 0, h: 0 };
  return {
    left: Math.ceil(seen.x - 1e-6) + 1,
    top: Math.ceil(seen.y - 1e-6) + 1,
    right: Math.floor(seen.x + seen.w + 1e-6) - 1,
    bottom: Math.floor(seen.y + seen.h + 1e-6) - 1,
  };
}

function enoughInView(grid: PixelGrid, area: PixelArea): boolean {
  const width = Math.max(0, area.right - area.left);
  const height = Math.max(0, area.bottom - area.top);
  return width * height > MIN_SHARE_IN_VIEW * Math.max(1, (grid.width - 2) * (grid.height - 2));
}

/** A displacement in pixels, y down, as one in pt, y up. */
function affineOf(d: Displacement, grid: PixelGrid): Affine {
  return {
    a: 1 + d.xx,
    b: (-d.yx * grid.across) / grid.up,
    c: (-d.xy * grid.up) / grid.across,
    d: 1 + d.yy,
    e: d.dx / grid.across,
    f: -d.dy / grid.up,
  };
}
