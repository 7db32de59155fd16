// The pen of the bench: how rectangles, lines and words of the sheet come onto the screen.
import { toScreen, type View } from '../../../shared/bench/view.ts';
import type { Point, Rect, Side } from '../../../shared/geometry/space.ts';
import { apply, applyToRect } from '../../../shared/geometry/transform.ts';

/** The part of a canvas's context that drawings use. */
export type Pen = Pick<
  CanvasRenderingContext2D,
  | 'arc'
  | 'beginPath'
  | 'clip'
  | 'closePath'
  | 'drawImage'
  | 'fill'
  | 'fillRect'
  | 'fillStyle'
  | 'fillText'
  | 'font'
  | 'globalAlpha'
  | 'globalCompositeOperation'
  | 'lineTo'
  | 'lineWidth'
  | 'measureText'
  | 'moveTo'
  | 'rect'
  | 'restore'
  | 'rotate'
  | 'roundRect'
  | 'save'
  | 'setLineDash'
  | 'shadowBlur'
  | 'shadowColor'
  | 'shadowOffsetY'
  | 'stroke'
  | 'strokeRect'
  | 'strokeStyle'
  | 'textAlign'
  | 'textBaseline'
  | 'transform'
  | 'translate'
>;

/** Where a rectangle of the side that is looked at is seen, in px. */
export function onScreen(view: View, rect: Rect<Side>): Rect<'screen'> {
  return applyToRect(toScreen<Side>(view), rect);
}

export function pointOnScreen(view: View, point: Point<Side>): Point<'screen'> {
  return apply(toScreen<Side>(view), point);
}

/** The middle of the pixel, so that a line of one pixel is one pixel. */
export function crisp(px: number): number {
  return Math.round(px - 0.5) + 0.5;
}

export function addRect(pen: Pen, { x, y, w, h }: Rect<'screen'>): void {
  const [left, top] = [crisp(x), crisp(y)];
  pen.rect(left, top, crisp(x + w) - left, crisp(y + h) - top);
}

/** Strokes the path that has been laid, light under dark, so that it is seen on any art. */
export function strokeOnArt(pen: Pen, colour: string, width: number, dash: readonly number[] = []): void {
  pen.setLineDash([...dash]);
  pen.lineWidth = width + 2;
  pen.strokeStyle = 'rgb(255 255 255 / 70%)';
  pen.stroke();
  pen.lineWidth = width;
  pen.strokeStyle = colour;
  pen.stroke();
  pen.setLineDash([]);
}

/** Hatches the inside of the path that has been laid with slanting lines `gap` px apart; lines of one path meet. */
export function hatchPath(pen: Pen, around: Rect<'screen'>, gap: number, colour: string): void {
  pen.save();
  pen.clip('evenodd');
  pen.beginPath();
  const slope = around.h;
  const first = Math.floor((around.x - slope) / gap) * gap;
  for (let x = first; x < around.x + around.w; x += gap) {
    pen.moveTo(x, around.y + around.h);
    pen.lineTo(x + slope, around.y);
  }
  pen.strokeStyle = colour;
  pen.lineWidth = 1;
  pen.stroke();
  pen.restore();
}

export const SMALL_TYPE = '12px system-ui, "Segoe UI", Roboto, "Liberation Sans", sans-serif';

export const TINY_TYPE = '10px system-ui, "Segoe UI", Roboto, "Liberation Sans", sans-serif';

/** Words on a plate of their own, their middle at (x, y). Gives the room they take. */
export function plate(
  pen: Pen,
  words: string,
  x: number,
  y: number,
  colours: { readonly plate: string; readonly ink: string },
): Rect<'screen'> {
  pen.font = SMALL_TYPE;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  const w = Math.ceil(pen.measureText(words).width) + 12;
  const room: Rect<'screen'> = { x: Math.round(x - w / 2), y: Math.round(y - 10), w, h: 20 };
  pen.fillStyle = colours.plate;
  pen.beginPath();
  pen.roundRect(room.x, room.y, room.w, room.h, 4);
  pen.fill();
  pen.fillStyle = colours.ink;
  pen.fillText(words, room.x + w / 2, room.y + 10.5);
  return room;
}
