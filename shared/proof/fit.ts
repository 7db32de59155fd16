// Finding how far one picture has to be moved (turned, scaled) to lie on another, to a fraction of a pixel.
import type { Area } from './band.ts';
import { affineStep, type Frame, type Step, shiftStep, sumUp } from './normalEquations.ts';
import type { Picture } from './picture.ts';
import { type Level, pyramidOf } from './pyramid.ts';

/**
 * Where the art was found, in pixels with y down: what belongs at (x, y) from the middle of the picture was printed
 * at (x + dx + xx x + xy y, y + dy + yx x + yy y).
 */
export interface Displacement {
  readonly dx: number;
  readonly dy: number;
  readonly xx: number;
  readonly xy: number;
  readonly yx: number;
  readonly yy: number;
}

/** A displacement, and in how many directions the picture has enough structure to tell it. */
export interface Fit {
  readonly displacement: Displacement;
  readonly told: number;
}

/** Moved only, or also turned, scaled and slanted. */
export type Freedom = 'shift' | 'affine';

const AT_REST: Displacement = { dx: 0, dy: 0, xx: 0, xy: 0, yx: 0, yy: 0 };
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
  const sources = pyramidOf(reference, COARSEST);
  let fit: Fit = { displacement: AT_REST, told: 0 };
  const targets = pyramidOf(found, COARSEST);
  for (const [level, target] of [...targets.entries()].reverse()) {
    const source = sources[level];
    if (source === undefined) throw new Error('The two pictures to be fitted differ in size');
    fit = fitLevel(target, source, frameOf(found, area, 2 ** level), freedom, fit.displacement);
  }
  return fit;
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

function fitLevel(target: Level, source: Level, frame: Frame, freedom: Freedom, start: Displacement): Fit {
  let displacement = start;
  let step: Step = { by: AT_REST, told: 0 };
  for (let round = 0; round < ROUNDS; round++) {
    const sums = sumUp(target, source, frame, displacement);
    step = freedom === 'shift' ? shiftStep(sums) : affineStep(sums);
    displacement = add(displacement, step.by, frame.scale);
    if (longest(step.by, Math.max(frame.middleX, frame.middleY)) < STILL) break;
  }
  return { displacement, told: step.told };
}

function add(d: Displacement, step: Displacement, scale: number): Displacement {
  return {
    dx: d.dx + step.dx * scale,
    dy: d.dy + step.dy * scale,
    xx: d.xx + step.xx,
    xy: d.xy + step.xy,
    yx: d.yx + step.yx,
    yy: d.yy + step.yy,
  };
}

/** The farthest that a displacement moves anything within `reach` of the middle, in pixels, one axis at a time. */
export function longest(d: Displacement, reach: number): number {
  const slope = Math.max(Math.abs(d.xx), Math.abs(d.xy), Math.abs(d.yx), Math.abs(d.yy));
  return Math.max(Math.abs(d.dx), Math.abs(d.dy), slope * reach);
}
