// The pen of the bench: how rectangles, lines and words of the sheet come onto the screen.
import { toScreen, type View } from '../../../shared/bench/view.ts';
import type { Point, Rect, Side } from '../../../shared/geometry/space.ts';
import { apply, applyToRect } from '../../../shared/geometry/transform.ts';

export type Paper = CanvasRenderingContext2D;

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

export function addRect(paper: Paper, { x, y, w, h }: Rect<'screen'>): void {
  const [left, top] = [crisp(x), crisp(y)];
  paper.rect(left, top, crisp(x + w) - left, crisp(y + h) - top);
}

/** Strokes the path that has been laid, light under dark, so that it is seen on any art. */
export function strokeOnArt(paper: Paper, colour: string, width: number, dash: readonly number[] = []): void {
  paper.setLineDash([...dash]);
  paper.lineWidth = width + 2;
  paper.strokeStyle = 'rgb(255 255 255 / 70%)';
  paper.stroke();
  paper.lineWidth = width;
  paper.strokeStyle = colour;
  paper.stroke();
  paper.setLineDash([]);
}

/** Hatches the inside of the path that has been laid with slanting lines `gap` px apart; lines of one path meet. */
export function hatch(paper: Paper, around: Rect<'screen'>, gap: number, colour: string): void {
  paper.save();
  paper.clip('evenodd');
  paper.beginPath();
  const slope = around.h;
  const first = Math.floor((around.x - slope) / gap) * gap;
  for (let x = first; x < around.x + around.w; x += gap) {
    paper.moveTo(x, around.y + around.h);
    paper.lineTo(x + slope, around.y);
  }
  paper.strokeStyle = colour;
  paper.lineWidth = 1;
  paper.stroke();
  paper.restore();
}

export const SMALL_TYPE = '12px system-ui, "Segoe UI", Roboto, "Liberation Sans", sans-serif';

export const TINY_TYPE = '10px system-ui, "Segoe UI", Roboto, "Liberation Sans", sans-serif';

/** Words on a plate of their own, their middle at (x, y). Gives the room they take. */
export function plate(
  paper: Paper,
  words: string,
  x: number,
  y: number,
  colours: { readonly plate: string; readonly ink: string },
): Rect<'screen'> {
  paper.font = SMALL_TYPE;
  paper.textAlign = 'center';
  paper.textBaseline = 'middle';
  const w = Math.ceil(paper.measureText(words).width) + 12;
  const room: Rect<'screen'> = { x: Math.round(x - w / 2), y: Math.round(y - 10), w, h: 20 };
  paper.fillStyle = colours.plate;
  paper.beginPath();
  paper.roundRect(room.x, room.y, room.w, room.h, 4);
  paper.fill();
  paper.fillStyle = colours.ink;
  paper.fillText(words, room.x + w / 2, room.y + 10.5);
  return room;
}
