// Trying a supposition: this face, printed about there. The art is photographed there and moved until it meets.
import type { Head } from '../geometry/head.ts';
import { intersection } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { applyToRect, chain } from '../geometry/transform.ts';
import { POINTS_PER } from '../units/length.ts';
import { type Area, countStrangers, differenceIn, likeness, soften, unmovedIn } from './band.ts';
import { type Displacement, longest } from './displacement.ts';
import { type Freedom, fitPicture } from './fit.ts';
import { type ArtFace, photographFace } from './gallery.ts';
import { type Grid, lensOverPiece } from './grid.ts';
import type { Picture } from './picture.ts';
import type { Lens } from './sight.ts';

/** From this many millimetres on, something is out of place. */
export const OUT_OF_PLACE = 0.25;

/** What was found at a position, in the hand: the face to be read, upright. */
export interface Found {
  readonly picture: Picture;
  /** The same softened, made when it is first needed. */
  readonly softened: () => Picture;
  readonly grid: Grid;
  /** How the picture lay on the sheet: it was turned counter-clockwise by this much to be upright. */
  readonly lie: Head;
  /** The trim and as much bleed as has to be seen, in pt from the middle of the trim. */
  readonly printed: Rect<'piece'>;
}

/** How a supposition turned out. */
export interface Settled {
  /** Where the face is printed, if it is this face. */
  readonly placed: Lens;
  /** The art, photographed there. */
  readonly picture: Picture;
  /** What can be compared: the trim, as far as the art reaches when it is printed there. */
  readonly area: Area;
  /** Whether the two show the same. */
  readonly agrees: boolean;
}

/**
 * Photographs with fewer strange pixels than this show the same, as far as photographs tell: at 150 to the inch they are
 * 0.17 square millimetres. Whether small type is right, the close look says.
 */
export const FEWEST_STRANGERS = 6;

const ROUNDS = 4;
/** Two pictures whose correlation is less than this after the first move will not meet by moving on. */
const HOPELESS = 0.5;
/** Moving by fewer pixels than this does not change the picture. */
const STILL = 0.03;
/** The least share of the trim that must be in view for an agreement: an even ground agrees with any other. */
const LEAST_IN_VIEW = 0.4;

/**
 * Photographs the face where it is supposed to be and moves it until it lies on what was found, as far as it does.
 * `first` is the first of these photographs where there is one already.
 */
export function settle(
  found: Found,
  face: ArtFace,
  supposed: Lens,
  freedom: Freedom,
  first?: Picture,
): Settled {
  let placed = supposed;
  let picture = first ?? photographFace(face, placed, found.grid, found.lie);
  let agrees = false;
  for (let round = 1; ; round++) {
    const area = areaInView(found, placed);
    if (!enoughInView(found.grid, area)) return { placed, picture, area, agrees: false };
    if (unmovedIn(found.picture, picture, area)) {
      return { placed, picture, area, agrees: agree(found, picture, area) };
    }
    // A renderer may draw a pattern so unevenly that it agrees where it is but not quite where it fits best.
    agrees ||= agree(found, picture, area);
    const settled: Settled = { placed, picture, area, agrees };
    if (round === 2 && likeness(found.picture, picture, area) < HOPELESS) return settled;
    const { displacement, told } = fitPicture(found.picture, picture, area, freedom);
    if (
      round === ROUNDS ||
      told === 0 ||
      longest(displacement, found.grid.width / 2, found.grid.height / 2) < STILL
    ) {
      return settled;
    }
    placed = chain(placed, lensOf(displacement, found.grid));
    picture = photographFace(face, placed, found.grid, found.lie);
  }
}

/**
 * The same face also turned, scaled and slanted, where that moves the edges of the trim out of their place and explains
 * most of what differed; else as it was. A small scale alone would pass for edges that wander.
 */
export function bend(found: Found, face: ArtFace, settled: Settled): Settled {
  const { picture, area, placed } = settled;
  if (unmovedIn(found.picture, picture, area)) return settled;
  const { displacement, told } = fitPicture(found.picture, picture, area, 'affine');
  const { grid } = found;
  const atEdges = longest({ ...displacement, dx: 0, dy: 0 }, grid.width / 2, grid.height / 2);
  if (told < 2 || atEdges < OUT_OF_PLACE * POINTS_PER.mm * Math.min(grid.across, grid.up)) return settled;
  const bent = settle(found, face, placed, 'affine');
  const before = differenceIn(found.picture, picture, area);
  return bent.agrees && differenceIn(found.picture, bent.picture, area) < before / 2 ? bent : settled;
}

/**
 * Whether what was found agrees with a picture of the art, edges that wander by a pixel forgiven: as they are, or else
 * softened, which lets thin lines meet halfway.
 */
function agree(found: Found, picture: Picture, area: Area): boolean {
  const few = (a: Picture, b: Picture) => countStrangers(a, b, area, FEWEST_STRANGERS) < FEWEST_STRANGERS;
  return few(found.picture, picture) || few(found.softened(), soften(picture));
}

/** The pixels of the trim that show art when it is printed at `placed`, without the outermost. */
export function areaInView(found: Found, placed: Lens): Area {
  const { grid } = found;
  const whole: Rect = { x: grid.margin, y: grid.margin, w: grid.width, h: grid.height };
  const art: Rect = applyToRect(chain(placed, lensOverPiece(grid)), found.printed);
  const seen = intersection(whole, art) ?? { x: 0, y: 0, w: 0, h: 0 };
  return {
    left: Math.ceil(seen.x - 1e-6) + 1,
    top: Math.ceil(seen.y - 1e-6) + 1,
    right: Math.floor(seen.x + seen.w + 1e-6) - 1,
    bottom: Math.floor(seen.y + seen.h + 1e-6) - 1,
  };
}

function enoughInView(grid: Grid, area: Area): boolean {
  const width = Math.max(0, area.right - area.left);
  const height = Math.max(0, area.bottom - area.top);
  return width * height > LEAST_IN_VIEW * Math.max(1, (grid.width - 2) * (grid.height - 2));
}

/** A displacement in pixels, y down, as one in pt, y up. */
function lensOf(d: Displacement, grid: Grid): Lens {
  return {
    a: 1 + d.xx,
    b: (-d.yx * grid.across) / grid.up,
    c: (-d.xy * grid.up) / grid.across,
    d: 1 + d.yy,
    e: d.dx / grid.across,
    f: -d.dy / grid.up,
  };
}
