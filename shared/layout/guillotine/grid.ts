// Plain grids: step and repeat of one cell, all lying the same way.
import type { Size } from '../../geometry/space.ts';
import type { Way } from './ways.ts';

/** A plain grid of cells. */
export interface Grid {
  readonly onItsSide: boolean;
  readonly across: number;
  readonly up: number;
}

/** The most cells that a plain grid holds in this room, lying one of these ways (ticks). */
export function mostInGrid(ways: readonly Way[], room: Size): number {
  return Math.max(0, ...ways.map((way) => Math.floor(room.w / way.w) * Math.floor(room.h / way.h)));
}

/**
 * The tidiest grid in this room with places for at least `count` cells, or `undefined` if none has: the fewest empty
 * places, then the fewest lines to cut, then the shortest outline, then upright. Lengths in ticks.
 */
export function tidiestGrid(count: number, ways: readonly Way[], room: Size): Grid | undefined {
  const grids = ways.flatMap((way) =>
    gridsFor(count, way, room).map((grid) => ({
      ...grid,
      places: grid.across * grid.up,
      lines: grid.across + grid.up,
      outline: grid.across * way.w + grid.up * way.h,
    })),
  );
  return grids.toSorted((a, b) => a.places - b.places || a.lines - b.lines || a.outline - b.outline)[0];
}

/** The grids of cells lying this way that fit this room and have places for `count`, with no row to spare (ticks). */
export function gridsFor(count: number, way: Way, room: Size): Grid[] {
  const mostUp = Math.floor(room.h / way.h);
  return Array.from({ length: Math.min(count, Math.floor(room.w / way.w)) }, (_, k) => ({
    onItsSide: way.onItsSide,
    across: k + 1,
    up: Math.ceil(count / (k + 1)),
  })).filter((grid) => grid.up <= mostUp);
}
