// Shapes as content stream operators, in grey.
import { layInto } from '../../geometry/lie.ts';
import type { Point } from '../../geometry/space.ts';
import { numbers } from '../sheet/operators.ts';
import type { Contour, InkTone, PathShape, Shape, Stroke, Weight, WordsShape } from './shape.ts';

/** The names under which the resources of a page hold its faces of type. */
export const FACE_NAMES: Readonly<Record<Weight, string>> = { plain: 'Plain', strong: 'Strong' };

/** Shades of grey: 0 is black. */
const GREYS: Readonly<Record<InkTone, number>> = { ink: 0, soft: 0.35, pale: 0.88, paper: 1 };

/** The operators that draw a shape. `encode` gives words as a hexadecimal string in the face of that weight. */
export function drawShape(shape: Shape, encode: (words: string, weight: Weight) => string): string {
  return shape.kind === 'path' ? drawPath(shape) : drawWords(shape, encode(shape.words, shape.weight));
}

function drawPath({ contours, fill, stroke }: PathShape): string {
  const paint = fill === undefined ? 'S' : stroke === undefined ? 'f' : 'B';
  const path = contours.map(drawContour).join(' ');
  const inks = [...(fill === undefined ? [] : [`${GREYS[fill]} g`]), ...(stroke ? [drawnWith(stroke)] : [])];
  return ['q', ...inks, path, paint, 'Q'].join(' ');
}

function drawnWith({ tone, width, dash = [] }: Stroke): string {
  return `${GREYS[tone]} G ${numbers(width)} w [${numbers(...dash)}] 0 d`;
}

function drawContour({ from, along, closed }: Contour): string {
  const steps = along.map((step) =>
    'to' in step ? `${at(step.c1)} ${at(step.c2)} ${at(step.to)} c` : `${at(step)} l`,
  );
  return [`${at(from)} m`, ...steps, ...(closed ? ['h'] : [])].join(' ');
}

function drawWords({ at: start, size, weight, tone, head }: WordsShape, encoded: string): string {
  const { a, b, c, d } = layInto({ x: 0, y: 0, w: 0, h: 0 }, head);
  const placed = `${numbers(a, b, c, d, start.x, start.y)} Tm`;
  return `BT ${GREYS[tone]} g /${FACE_NAMES[weight]} ${numbers(size)} Tf ${placed} ${encoded} Tj ET`;
}

function at(p: Point): string {
  return numbers(p.x, p.y);
}
