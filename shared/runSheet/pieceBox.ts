// One place of the dummy: a box with F or B, turned as its head is, a triangle at the head, and its number.
import { lying } from '../geometry/head.ts';
import { layInto } from '../geometry/lie.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { fitWords, type Measures, type Style, setLine } from '../pdf/document/setWords.ts';
import { box, carryShapes, moveShapes, polygon, type Shape, type Stroke } from '../pdf/document/shape.ts';
import type { SeenPiece } from './seenPasses.ts';

/** The smallest type that is still read on a run sheet, in pt. */
const MIN_TYPE_PT = 5;
/** The largest letter in a box, in pt. */
const MAX_TYPE_PT = 30;

/** The shapes of a place, drawn into this room of a page. `letter`: what stands for its design, where there are several. */
export function drawPiece(
  seen: SeenPiece,
  room: Rect,
  letter: string | undefined,
  measures: Measures,
): readonly Shape[] {
  const upright = lying(room, seen.head);
  const inside = seen.printed ? drawFace(seen, upright, letter, measures) : drawBlank(upright, measures);
  return [
    box(room, { fill: seen.face === 'front' ? 'paper' : 'pale', stroke: strokeOf(seen) }),
    ...carryShapes(inside, layInto(room, seen.head), seen.head),
  ];
}

/** Backs are dashed as well as shaded, so that a poor printer still tells them from fronts. */
function strokeOf({ face, printed }: SeenPiece): Stroke {
  const width = printed ? 0.8 : 0.5;
  return face === 'front' ? { tone: 'ink', width } : { tone: 'ink', width, dash: [4, 2] };
}

/** Letter, head and number, upright in a box of this size with its lower left at the origin. */
function drawFace(
  { face, number, piece }: SeenPiece,
  size: Size,
  letter: string | undefined,
  measures: Measures,
): readonly Shape[] {
  const least = Math.min(size.w, size.h);
  const tip = Math.min(9, least * 0.22);
  const head = polygon(
    [
      { x: size.w / 2, y: size.h - 0.12 * tip },
      { x: size.w / 2 - tip, y: size.h - 1.15 * tip },
      { x: size.w / 2 + tip, y: size.h - 1.15 * tip },
    ],
    { fill: 'ink' },
  );
  const free = size.h - 1.3 * tip;
  const large: Style = {
    size: Math.max(MIN_TYPE_PT, Math.min(MAX_TYPE_PT, 3 + least * 0.3)),
    weight: 'strong',
    tone: 'ink',
  };
  const small: Style = { size: Math.min(10, Math.max(6.5, least * 0.12)), weight: 'plain', tone: 'ink' };
  const fits = (words: string) => fitWords(words, small, size.w - 6, measures) === words;
  const below = free > large.size + 1.6 * small.size ? (toldOf(number, letter, piece).find(fits) ?? '') : '';
  const room = below === '' ? 0 : 1.35 * small.size;
  return [
    head,
    ...centreLine(face === 'front' ? 'F' : 'B', large, size.w / 2, room + (free - room) / 2, measures),
    ...centreLine(below, small, size.w / 2, 0.5 * room + 1.5, measures),
  ];
}

/** What may be said below the letter, the most of it first. */
function toldOf(number: number | undefined, letter: string | undefined, piece: string): readonly string[] {
  const first = number === undefined ? '' : `${number}`;
  return letter === undefined
    ? [first]
    : [`${first} ${letter} ${piece}`, `${first} ${letter}`, letter].map((words) => words.trim());
}

function drawBlank(size: Size, measures: Measures): readonly Shape[] {
  const style: Style = {
    size: Math.min(11, Math.max(MIN_TYPE_PT, size.w * 0.16)),
    weight: 'plain',
    tone: 'soft',
  };
  return centreLine(fitWords('blank', style, size.w - 4, measures), style, size.w / 2, size.h / 2, measures);
}

/** How high a capital is, as a share of the size of type. */
const CAP_HEIGHT_SHARE = 0.73;

/** A line of capitals and figures with its middle at (x, y). */
function centreLine(words: string, style: Style, x: number, y: number, measures: Measures): readonly Shape[] {
  if (words === '') return [];
  const set = setLine(words, style, measures);
  const [shape] = set.shapes;
  const baseline = shape?.kind === 'words' ? shape.at.y : 0;
  return moveShapes(set.shapes, x - set.w / 2, y - baseline - (CAP_HEIGHT_SHARE / 2) * style.size);
}
