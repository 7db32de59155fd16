// Finding how far one picture has to be moved (turned, scaled) to lie on another, to a fraction of a pixel.
import type { Area } from './band.ts';
import { AT_REST, addStep, type Displacement, longest } from './displacement.ts';
import type { Direction } from './hand.ts';
import { affineStep, type Frame, shiftStep, sumUp } from './normalEquations.ts';
import type { Picture } from './picture.ts';
import { type Level, pyramidOf } from './pyramid.ts';
import { directionsIn } from './structure.ts';

/** A displacement, and in how many directions, 0 to 2, the picture has enough structure to tell it. */
export interface Fit {
  readonly displacement: Displacement;
  readonly told: number;
}

/** Moved only, or also turned, scaled and slanted. */
export type Freedom = 'shift' | 'affine';

/** The shorter side of the coarsest level, in pixels. */
const COARSEST = 12;
const ROUNDS = 6;
/** A step shorter than this many pixels ends the search on its level. */
const STILL = 0.01;

/**
 * Fits `reference` to `found` by least squares, from coarse to fine. Both have the same size; only the area is
 * looked at.
 *
 * @source The method of Lucas and Kanade (1981), from memory; proved by pictures moved by known amounts in the tests.
 */
export function fitPicture(found: Picture, reference: Picture, area: Area, freedom: Freedom): Fit {
  const told = directionsIn(reference, area);
  const sources = pyramidOf(reference, COARSEST);
  const targets = pyramidOf(found, COARSEST);
  let displacement = AT_REST;
  for (const [level, target] of [...targets.entries()].reverse()) {
    const source = sources[level];
    if (source === undefined) throw new Error('The two pictures to be fitted differ in size');
    const frame = frameOf(found, area, 2 ** level);
    displacement = fitLevel(target, source, frame, freedom === 'shift' ? told : freedom, displacement);
  }
  return { displacement, told: told.length };
}

function frameOf(picture: Picture, area: Area, scale: number): Frame {
  return {
    scale,
    middleX: picture.width / 2 / scale,
    middleY: picture.height / 2 / scale,
    left: Math.ceil(area.left / scale),
    top: Math.ceil(area.top / scale),
    right: Math.floor(area.right / scale),
    bottom: Math.floor(area.bottom / scale),
  };
}

/** Fits one level, starting from `start`; `freedom` may be the directions to move along. */
function fitLevel(
  target: Level,
  source: Level,
  frame: Frame,
  freedom: 'affine' | readonly Direction[],
  start: Displacement,
): Displacement {
  let displacement = start;
  for (let round = 0; round < ROUNDS; round++) {
    const sums = sumUp(target, source, frame, displacement);
    const step = freedom === 'affine' ? affineStep(sums) : shiftStep(sums, freedom);
    displacement = addStep(displacement, step, frame.scale);
    if (longest(step, frame.middleX, frame.middleY) < STILL) break;
  }
  return displacement;
}
