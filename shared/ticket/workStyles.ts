// What the open job ticket calls the ways of working.
import type { WorkStyle } from '../geometry/work.ts';

/** @source CIP4 XJDF, enumeration WorkStyle. */
export const WORK_STYLE_NAMES: Readonly<Record<WorkStyle, string>> = {
  simplex: 'Simplex',
  'work-and-back': 'WorkAndBack',
  perfecting: 'Perfecting',
  'work-and-turn': 'WorkAndTurn',
  'work-and-tumble': 'WorkAndTumble',
};
