// Image registration: how far one picture has to be moved (turned, scaled) to lie on another, to a fraction of a pixel.
import type { PixelArea } from './band.ts';
import { compose, type Displacement, largestMove, NO_DISPLACEMENT } from './displacement.ts';
import {
  gaussNewtonAffine,
  gaussNewtonTranslation,
  type LevelWindow,
  normalEquations,
} from './gaussNewton.ts';
import type { Direction } from './hand.ts';
import type { Picture } from './picture.ts';
import { type PyramidLevel, pyramidOf } from './pyramid.ts';
import { observableDirections } from './structure.ts';

/** A displacement, and in how many directions, 0 to 2, the picture has enough structure for it to be observable. */
export interface Registration {
  readonly displacement: Displacement;
  readonly observableDirections: number;
}

/** Moved only, or also turned, scaled and slanted. */
export type MotionModel = 'translation' | 'affine';

/** The shorter side of the coarsest level, in pixels. */
const COARSEST_SIDE_PX = 12;
const MAX_STEPS_PER_LEVEL = 6;
/** A step shorter than this many pixels ends the search on its level. */
const CONVERGED_PX = 0.01;

/**
 * Registers `reference` with `found` by least squares, Gauss-Newton steps on a pyramid from coarse to fine. Both have the same size; only the area is
 * looked at.
 *
 * @source The method of Lucas and Kanade (1981), from memory; proved by pictures moved by known amounts in the tests.
 */
export function registerPicture(
  found: Picture,
  reference: Picture,
  area: PixelArea,
  model: MotionModel,
): Registration {
  const directions = observableDirections(reference, area);
  const sources = pyramidOf(reference, COARSEST_SIDE_PX);
  const targets = pyramidOf(found, COARSEST_SIDE_PX);
  let displacement = NO_DISPLACEMENT;
  for (const [level, target] of [...targets.entries()].reverse()) {
    const source = sources[level];
    if (source === undefined) throw new Error('The two pictures to be fitted differ in size');
    const frame = windowOf(found, area, 2 ** level);
    displacement = registerLevel(
      target,
      source,
      frame,
      model === 'translation' ? directions : model,
      displacement,
    );
  }
  return { displacement, observableDirections: directions.length };
}

function windowOf(picture: Picture, area: PixelArea, scale: number): LevelWindow {
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

/** Registers one level, starting from `start`; `model` may be the directions to move along. */
function registerLevel(
  target: PyramidLevel,
  source: PyramidLevel,
  frame: LevelWindow,
  model: 'affine' | readonly Direction[],
  start: Displacement,
): Displacement {
  let displacement = start;
  for (let round = 0; round < MAX_STEPS_PER_LEVEL; round++) {
    const sums = normalEquations(target, source, frame, displacement);
    const step = model === 'affine' ? gaussNewtonAffine(sums) : gaussNewtonTranslation(sums, model);
    displacement = compose(displacement, step, frame.scale);
    if (largestMove(step, frame.middleX, frame.middleY) < CONVERGED_PX) break;
  }
  return displacement;
}
