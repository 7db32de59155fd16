// The drawing of one step: the table of the guillotine from above, the person standing below.
import { centre, holds } from '../geometry/rect.ts';
import type { Point, Rect, Size } from '../geometry/space.ts';
import type { PageBlock } from '../pdf/document/block.ts';
import type { Measures, Style } from '../pdf/document/setWords.ts';
import { box, line, type Shape } from '../pdf/document/shape.ts';
import type { Unit } from '../units/length.ts';
import { drawTurnArrow } from './drawTurnArrow.ts';
import { hatchLines } from './hatch.ts';
import { type LaidStack, layOnTable } from './layOnTable.ts';
import type { CutOutcome, CutStep, CuttingOrder } from './order.ts';
import { showOnScale } from './showOnScale.ts';
import { sayEdge } from './words.ts';

const PLAIN: Style = { size: 7.5, weight: 'plain', tone: 'ink' };
const NUMBER: Style = { size: 10, weight: 'strong', tone: 'ink' };
/** A number smaller than this is not read, and left out. */
const MIN_TYPE_PT = 4;
/** The height of figures as a share of the type's size. */
const FIGURE_HEIGHT_SHARE = 0.73;

/** Beside the stack stand the distance and the side guide, above it the back gauge, above and below it words. */
const SURROUND = { beside: 40, above: 20, below: 18 };
const BAR_PT = 5;
const OVERHANG_PT = 8;
const OUTLINE = { tone: 'ink', width: 0.8 } as const;
const FINE = { tone: 'soft', width: 0.4 } as const;
const KNIFE = { tone: 'ink', width: 1.6, dash: [5, 3] } as const;
const ARROW_PT = 12;

/**
 * The drawing of a step in `room` (pt): the back gauge at the top, the side guide at its hand, the stack as it lies,
 * waste hatched, positions by their numbers, the line of the knife with its distance, and the turn made before it.
 * Stacks of one step are cut alike: the first is drawn, and how many there are is said.
 */
export function drawStep(
  order: CuttingOrder,
  step: CutStep,
  room: Size,
  unit: Unit,
  measures: Measures,
): PageBlock {
  const laid = layOnTable(step, room, SURROUND);
  const [{ behind, inFront }] = step.parts;
  const alike = step.parts.length === 1 ? '' : `, ${step.parts.length} stacks`;
  const middle = laid.stack.x + laid.stack.w / 2;
  const caption = (words: string, y: number) => setCentred(words, { x: middle, y }, PLAIN, measures, room);
  return {
    ...room,
    shapes: [
      box(laid.stack, { fill: 'paper', stroke: OUTLINE }),
      ...[behind, inFront].flatMap((outcome) => drawOutcome(order, outcome, laid, measures)),
      ...drawGuides(step, laid.stack),
      ...drawKnife(step, laid),
      ...drawDistance(step, laid, showOnScale(step.distance, unit), measures, room),
      caption(`back gauge: ${sayEdge(step.gauge)}`, -9),
      caption(`${step.side.hand} guide: ${sayEdge(step.side.edge)}${alike}`, -room.h + 4),
      ...drawTurnArrow(step.turned, arrowAt(step, room), ARROW_PT),
    ],
  };
}

function drawOutcome(
  { arrangement }: CuttingOrder,
  outcome: CutOutcome,
  { toTable }: LaidStack,
  measures: Measures,
): readonly Shape[] {
  const area = toTable(outcome.area);
  if (outcome.becomes === 'waste') return [hatchLines(area, FINE), box(area, { stroke: OUTLINE })];
  const widest = measures[NUMBER.weight](`${arrangement.length}`);
  return arrangement.flatMap(({ trim }, i) =>
    holds(outcome.area, trim) ? drawPiece(toTable(trim), `${i + 1}`, widest, measures) : [],
  );
}

/** `widest` is the width, at size 1, that the longest number takes: equal pieces get numbers of one size. */
function drawPiece(trim: Rect, number: string, widest: number, measures: Measures): readonly Shape[] {
  const size = Math.min(NUMBER.size, trim.h * 0.7, (trim.w * 0.8) / widest);
  const outline = box(trim, { fill: 'pale', stroke: OUTLINE });
  if (size < MIN_TYPE_PT) return [outline];
  const { x, y } = centre(trim);
  const at = { x: x - (measures[NUMBER.weight](number) * size) / 2, y: y - (FIGURE_HEIGHT_SHARE * size) / 2 };
  return [outline, { kind: 'words', words: number, at, head: 0, ...NUMBER, size }];
}

/** The back gauge along the top of the stack, the side guide along the upper part of one side. */
function drawGuides({ side }: CutStep, { x, y, w, h }: Rect): readonly Shape[] {
  const top = y + h;
  const long = Math.min(h, Math.max(h * 0.4, 12));
  return [
    box({ x: x - OVERHANG_PT, y: top, w: w + 2 * OVERHANG_PT, h: BAR_PT }, { fill: 'ink' }),
    box(
      { x: side.hand === 'left' ? x - BAR_PT : x + w, y: top - long, w: BAR_PT, h: long },
      { fill: 'soft' },
    ),
  ];
}

function drawKnife({ distance }: CutStep, { stack, scale }: LaidStack): readonly Shape[] {
  const y = stack.y + stack.h - distance * scale;
  return [line({ x: stack.x - OVERHANG_PT, y }, { x: stack.x + stack.w + OVERHANG_PT, y }, KNIFE)];
}

/** The distance from the gauge to the knife, on the side that has no guide. */
function drawDistance(
  { distance, side }: CutStep,
  { stack, scale }: LaidStack,
  words: string,
  measures: Measures,
  room: Size,
): readonly Shape[] {
  const away = side.hand === 'left' ? 1 : -1;
  const x = (away === 1 ? stack.x + stack.w : stack.x) + away * (OVERHANG_PT + 5);
  const top = stack.y + stack.h;
  const knife = top - distance * scale;
  const tick = (y: number) => line({ x: x - 3, y }, { x: x + 3, y }, OUTLINE);
  const long = measures[NUMBER.weight](words) * NUMBER.size;
  const start = Math.max(-room.h, Math.min((top + knife) / 2 - long / 2, -long));
  const baseline = away === 1 ? x + 4 + FIGURE_HEIGHT_SHARE * NUMBER.size : x - 4;
  return [
    line({ x, y: top }, { x, y: knife }, OUTLINE),
    tick(top),
    tick(knife),
    { kind: 'words', words, at: { x: baseline, y: start }, head: 90, ...NUMBER },
  ];
}

/** In the lower corner on the side of the guide, which nothing else takes. */
function arrowAt({ side }: CutStep, room: Size): Point {
  const aside = SURROUND.beside / 2 - 2;
  return { x: side.hand === 'left' ? aside : room.w - aside, y: -room.h + SURROUND.below + ARROW_PT };
}

/** Words about a point, moved as far as they must be to stay in the room. */
function setCentred(words: string, { x, y }: Point, style: Style, measures: Measures, room: Size): Shape {
  const long = measures[style.weight](words) * style.size;
  const start = Math.max(0, Math.min(x - long / 2, room.w - long));
  return { kind: 'words', words, at: { x: start, y }, head: 0, ...style };
}
