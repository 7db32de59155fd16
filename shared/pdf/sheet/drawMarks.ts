// Marks as content stream operators.
import { layInto } from '../../geometry/lie.ts';
import type { Point } from '../../geometry/space.ts';
import { boundsOf, type Mark, type MarkInk, type RingMark, type WordsMark } from '../../marks/mark.ts';
import { clipTo, numbers } from './operators.ts';

/** The names under which a page's resources hold what its marks use. */
export const MARK_RESOURCES = { allPlates: 'AllPlates', face: 'MarkFace' } as const;

/** Ink as operators that set it, for filling and for stroking. */
const INKS: Readonly<Record<MarkInk, { readonly fill: string; readonly stroke: string }>> = {
  registration: {
    fill: `/${MARK_RESOURCES.allPlates} cs 1 scn`,
    stroke: `/${MARK_RESOURCES.allPlates} CS 1 SCN`,
  },
  black: { fill: '0 0 0 1 k', stroke: '0 0 0 1 K' },
  paper: { fill: '0 0 0 0 k', stroke: '0 0 0 0 K' },
};

/** How far the handles of a quarter ring reach, as a share of its radius. */
const BEZIER_CIRCLE = (4 / 3) * (Math.SQRT2 - 1);

/** The operators that print a mark. `encode` gives words as a hexadecimal string in the face of the marks. */
export function drawMark(mark: Mark, encode: (words: string) => string): string {
  switch (mark.kind) {
    case 'line': {
      const path = `${at(mark.from)} m ${at(mark.to)} l S`;
      return `${numbers(mark.width)} w ${INKS[mark.ink].stroke} ${path}`;
    }
    case 'ring':
      return `${numbers(mark.width)} w ${INKS[mark.ink].stroke} ${ringPath(mark)} S`;
    case 'shape':
      return `${INKS[mark.ink].fill} ${mark.corners.map((p, i) => `${at(p)} ${i === 0 ? 'm' : 'l'}`).join(' ')} f`;
    case 'words':
      return drawWords(mark, encode(mark.words));
  }
}

/** Words keep to their own box, so that no character, however tall its accents, reaches into a bleed. */
function drawWords(mark: WordsMark, encoded: string): string {
  const { a, b, c, d } = layInto({ x: 0, y: 0, w: 0, h: 0 }, mark.head);
  return [
    'q',
    clipTo([boundsOf(mark)]),
    INKS[mark.ink].fill,
    `BT /${MARK_RESOURCES.face} ${numbers(mark.size)} Tf`,
    `${numbers(a, b, c, d, mark.at.x, mark.at.y)} Tm ${encoded} Tj ET`,
    'Q',
  ].join(' ');
}

function ringPath({ centre, radius }: RingMark): string {
  const point = (x: number, y: number) => at({ x: centre.x + x * radius, y: centre.y + y * radius });
  const quarters = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  const curves = quarters.map(([x, y]) => {
    const leaving = point(x - BEZIER_CIRCLE * y, y + BEZIER_CIRCLE * x);
    const arriving = point(-y + BEZIER_CIRCLE * x, x + BEZIER_CIRCLE * y);
    return `${leaving} ${arriving} ${point(-y, x)} c`;
  });
  return `${point(1, 0)} m ${curves.join(' ')} h`;
}

function at(p: Point): string {
  return numbers(p.x, p.y);
}
