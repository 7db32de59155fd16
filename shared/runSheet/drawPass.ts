// The dummy of one side: the sheet as the hands see it, its lead edge, its guide and all its places.
import type { Rect, Size } from '../geometry/space.ts';
import { type PageBlock, place } from '../pdf/document/block.ts';
import { fitWords, type Measures, type Style, setLine } from '../pdf/document/setWords.ts';
import { box, line, polygon, type Shape } from '../pdf/document/shape.ts';
import { drawPiece } from './pieceBox.ts';
import type { SeenPass } from './seenPasses.ts';

/** Room left and right of the drawn sheet for guides and pencil, in pt. */
const ASIDE_PT = 16;
const CAPTION: Style = { size: 12, weight: 'strong', tone: 'ink' };
const LABEL: Style = { size: 9.5, weight: 'plain', tone: 'ink' };
const ON_BAR: Style = { size: 9, weight: 'strong', tone: 'paper' };
/** Above the sheet: the caption, the arrow of the feed, and the bar of the lead edge. */
const ABOVE = { caption: 16, feed: 20, bar: 15 };
/** Below it: which edge lies there, and where the sheet is held. */
const BENEATH_PT = 30;

export interface PassDrawing {
  readonly pass: SeenPass;
  readonly sheet: Size;
  /** Whether hands turn the pile, so that it has a pencil line. */
  readonly byHand: boolean;
  /** The letter of each design by its name; none where there is one design only. */
  readonly letters: ReadonlyMap<string, string>;
}

/** How high what stands above the drawn sheet is, in pt; what stands below it is lower. */
export const LABELS_ABOVE = ABOVE.caption + ABOVE.feed + ABOVE.bar;
const LABELS = LABELS_ABOVE + BENEATH_PT;

/**
 * How large a sheet can be drawn in a room of this size: points of the page to a point of the sheet. `labels`: how
 * much of the height is kept for what stands above and below it.
 */
export function scaleFor(sheet: Size, room: Size, labels = LABELS): number {
  return Math.min((room.w - 2 * ASIDE_PT) / sheet.w, (room.h - labels) / sheet.h);
}

/** Where the drawn sheet lies in the block of its drawing, at this scale. */
export function sheetIn(sheet: Size, scale: number): Rect {
  return { x: ASIDE_PT, y: -LABELS_ABOVE - sheet.h * scale, w: sheet.w * scale, h: sheet.h * scale };
}

/** The drawing of a pass at a scale of `scaleFor`. */
export function drawPass(drawing: PassDrawing, scale: number, measures: Measures): PageBlock {
  const { pass, sheet, letters } = drawing;
  const at = sheetIn(sheet, scale);
  const pieces = pass.pieces.flatMap((seen) => {
    const { x, y, w, h } = seen.trim;
    const room = { x: at.x + x * scale, y: at.y + y * scale, w: w * scale, h: h * scale };
    return drawPiece(seen, room, letters.get(seen.piece), measures);
  });
  const width = at.w + 2 * ASIDE_PT;
  return {
    w: width,
    h: -at.y + BENEATH_PT,
    shapes: [
      ...centred(captionOf(drawing), CAPTION, width, 0, measures),
      ...drawFeed(at, measures),
      box(at, { fill: 'paper', stroke: { tone: 'ink', width: 1 } }),
      ...drawBar(pass, at, measures),
      ...pieces,
      ...drawGuides(pass, at),
      ...(drawing.byHand ? drawPencil(pass, at) : []),
      ...centred(`${lastEdge(pass)} edge`, LABEL, width, at.y - 2, measures),
      ...centred(heldInWords(pass), { ...LABEL, weight: 'strong' }, width, at.y - 15, measures),
    ],
  };
}

function captionOf({ pass, byHand }: PassDrawing): string {
  return byHand ? `PASS ${pass.side} · SIDE ${pass.side}` : `SIDE ${pass.side}`;
}

/** Where the sheet is held in this pass, by the names that its edges have on side 1. */
export function heldInWords({ meets }: SeenPass): string {
  return meets === undefined ? 'held in the middle' : `side guide: ${meets} edge`;
}

/** The edge that comes last in this pass, by the name that it has on side 1. */
function lastEdge({ leads }: SeenPass): string {
  return leads === 'lead' ? 'tail' : 'lead';
}

/** The arrow of the feed above the sheet. */
function drawFeed(at: Rect, measures: Measures): readonly Shape[] {
  const x = at.x + at.w / 2;
  const y = at.y + at.h + ABOVE.bar;
  const words = fitWords('into the printer', LABEL, at.w / 2 - 4, measures);
  const shaft = line({ x, y: y + 3 }, { x, y: y + 12 }, { tone: 'ink', width: 2 });
  const tip = polygon(
    [
      { x, y: y + 19 },
      { x: x - 5, y: y + 11 },
      { x: x + 5, y: y + 11 },
    ],
    { fill: 'ink' },
  );
  return [shaft, tip, ...place(setLine(words, LABEL, measures), x + 9, y + 16)];
}

/** The bar of the lead edge; its words say where the edge that leads comes from. */
function drawBar(pass: SeenPass, at: Rect, measures: Measures): readonly Shape[] {
  const bar = { x: at.x, y: at.y + at.h + 1, w: at.w, h: ABOVE.bar - 2 };
  const whole = barWords(pass);
  const words = whole.find((w) => fitWords(w, ON_BAR, at.w - 6, measures) === w) ?? whole.at(-1) ?? '';
  const fit = fitWords(words, ON_BAR, at.w - 6, measures);
  const set = setLine(fit, ON_BAR, measures);
  return [box(bar, { fill: 'ink' }), ...place(set, at.x + (at.w - set.w) / 2, bar.y + bar.h - 1.5)];
}

function barWords({ side, leads }: SeenPass): readonly string[] {
  if (side === 1) return ['LEAD EDGE', 'LEAD'];
  return leads === 'lead'
    ? ['LEAD EDGE: the same edge again', 'LEAD EDGE: the same', 'LEAD EDGE', 'LEAD']
    : ['LEAD EDGE: now the tail of pass 1', 'LEAD EDGE: now the tail', 'LEAD: the tail', 'LEAD'];
}

/** Blocks where guides touch the sheet: on one side, or on both where it is centred. */
function drawGuides({ guide }: SeenPass, at: Rect): readonly Shape[] {
  const sides = guide === undefined ? (['left', 'right'] as const) : [guide];
  return sides.map((side) => {
    const x = side === 'left' ? at.x - 9 : at.x + at.w + 2;
    const look =
      guide === undefined ? { stroke: { tone: 'ink', width: 1 } as const } : { fill: 'ink' as const };
    return box({ x, y: at.y + at.h * 0.28, w: 7, h: at.h * 0.44 }, look);
  });
}

/** Three strokes over the edge: the pencil line down the side of the pile. */
function drawPencil({ pencil }: SeenPass, at: Rect): readonly Shape[] {
  const x = pencil.side === 'left' ? at.x : at.x + at.w;
  const y = pencil.at === 'lead' ? at.y + at.h - 10 : at.y + 4;
  return [0, 3, 6].map((up) =>
    line({ x: x - 5, y: y + up }, { x: x + 5, y: y + up }, { tone: 'ink', width: 1 }),
  );
}

function centred(
  words: string,
  style: Style,
  width: number,
  top: number,
  measures: Measures,
): readonly Shape[] {
  const set = setLine(fitWords(words, style, width, measures), style, measures);
  return place(set, (width - set.w) / 2, top);
}
