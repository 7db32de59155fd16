// The turn as a movement of the hand: which edge is taken, over which line the sheet goes, and where it is laid down.
import { poseOf, see } from '../bench/turning.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Point, Size } from '../geometry/space.ts';
import type { Turn } from '../geometry/turn.ts';
import { type PageBlock, place } from '../pdf/document/block.ts';
import { type Measures, type Style, setCentred } from '../pdf/document/setWords.ts';
import { box, curve, line, polygon, type Shape } from '../pdf/document/shape.ts';

/** What the hand does, on side 1, lead edge up, in pt. */
export interface Movement {
  /** The edge that the hand takes, and the middle of it. */
  readonly edge: SheetEdge;
  readonly take: Point;
  /** Where that point comes to lie once the sheet is turned; the sheet keeps its place on the table. */
  readonly lay: Point;
  /** The line that the sheet turns about. */
  readonly axis: readonly [Point, Point];
}

/** The turn as hands make it: like a page from right to left, or the tail up and over to the lead edge. */
export function movementOf(turn: Turn, sheet: Size): Movement {
  const { w, h } = sheet;
  return turn === 'side-to-side'
    ? {
        edge: 'right',
        take: { x: w, y: h / 2 },
        lay: { x: 0, y: h / 2 },
        axis: [
          { x: w / 2, y: 0 },
          { x: w / 2, y: h },
        ],
      }
    : {
        edge: 'tail',
        take: { x: w / 2, y: 0 },
        lay: { x: w / 2, y: h },
        axis: [
          { x: 0, y: h / 2 },
          { x: w, y: h / 2 },
        ],
      };
}

/** The movement in words. */
export function sayMovement(turn: Turn): string {
  return turn === 'side-to-side'
    ? 'Take the right edge and lay it over to the left, like a page.'
    : 'Take the tail and lay it over to the top, end to end.';
}

/** No side of the drawn sheet is longer than this, in pt. */
const MAX_SIDE_PT = 84;
/** How far the half-turned sheet is drawn: lifted, but not yet upright, in degrees. */
const LIFT_PT = 50;
const HEAD: Style = { size: 12, weight: 'strong', tone: 'ink' };
const WORDS: Style = { size: 9, weight: 'plain', tone: 'ink' };

/** The drawing of the movement, this wide. `itself`: the printer makes it. */
export function drawMovement(
  turn: Turn,
  sheet: Size,
  itself: boolean,
  width: number,
  measures: Measures,
): PageBlock {
  const scale = MAX_SIDE_PT / Math.max(sheet.w, sheet.h);
  const size = { w: sheet.w * scale, h: sheet.h * scale };
  const title = setCentred(itself ? 'The printer turns it' : 'TURN', HEAD, width, measures);
  const said = setCentred(itself ? 'Nothing to do by hand.' : sayMovement(turn), WORDS, width, measures);
  // Above the sheet there is room for the arc, beside it for the dot of the hand.
  const left = (width - size.w) / 2;
  const top = title.h + 18;
  const drawn = drawTurning(movementOf(turn, size), size);
  return {
    w: width,
    h: top + size.h + 16 + said.h,
    shapes: [
      ...place(title, 0, 0),
      ...place({ ...size, shapes: drawn }, left, -top - size.h),
      ...place(said, 0, -top - size.h - 16),
    ],
  };
}

/** The sheet, its axis, the half it is lifted by, and the arrow; the lower left of the sheet at the origin. */
function drawTurning({ take, lay, axis, edge }: Movement, size: Size): readonly Shape[] {
  const sideways = edge === 'right';
  const middle = { x: size.w / 2, y: size.h / 2 };
  const grip = {
    axis: sideways ? ('x' as const) : ('y' as const),
    end: sideways ? (1 as const) : (-1 as const),
    grabbed: (sideways ? size.w : size.h) / 2,
  };
  const pose = poseOf('front', LIFT_PT, grip, 4 * Math.max(size.w, size.h));
  const seen = (x: number, y: number) => {
    const p = see(pose, { x: x - middle.x, y: y - middle.y });
    return { x: p.x + middle.x, y: p.y + middle.y };
  };
  const lifted = polygon([seen(0, 0), seen(size.w, 0), seen(size.w, size.h), seen(0, size.h)], {
    fill: 'pale',
    stroke: { tone: 'soft', width: 0.8 },
  });
  const beyond = (p: Point) =>
    sideways ? { x: p.x, y: p.y + (p.y > 0 ? 7 : -7) } : { x: p.x + (p.x > 0 ? 7 : -7), y: p.y };
  return [
    box({ x: 0, y: 0, ...size }, { stroke: { tone: 'ink', width: 1 } }),
    lifted,
    line(beyond(axis[0]), beyond(axis[1]), { tone: 'ink', width: 1, dash: [8, 2, 2, 2] }),
    ...drawArrow(take, lay, sideways),
  ];
}

/** A dot where the hand takes hold, an arc over the axis, and a tip where the edge is laid down. */
function drawArrow(take: Point, lay: Point, sideways: boolean): readonly Shape[] {
  const reach = Math.hypot(lay.x - take.x, lay.y - take.y);
  const out = sideways ? { x: 0, y: 1 } : { x: 1, y: 0 };
  const bow = reach * 0.62;
  const bent = (p: Point) => ({ x: p.x + out.x * bow, y: p.y + out.y * bow });
  const tip = 7;
  const short = { x: lay.x + out.x * tip, y: lay.y + out.y * tip };
  const side = { x: out.y * tip * 0.65, y: out.x * tip * 0.65 };
  const dot = { x: take.x - 3.5, y: take.y - 3.5, w: 7, h: 7 };
  return [
    curve(take, { c1: bent(take), c2: bent(short), to: short }, { tone: 'ink', width: 2.2 }),
    polygon(
      [lay, { x: short.x + side.x, y: short.y + side.y }, { x: short.x - side.x, y: short.y - side.y }],
      { fill: 'ink' },
    ),
    box(dot, { fill: 'ink' }),
  ];
}
