// The sign on a piece that something is said of: a cross where it spoils the sheet, else an exclamation mark.
import type { Rect } from '../../../shared/geometry/space.ts';
import type { Pen } from './pen.ts';

/** The sign stands in the upper right of its room, or in the middle of a small one. */
export function paintSign(pen: Pen, { x, y, w, h }: Rect<'screen'>, grave: boolean, colour: string): void {
  const r = Math.max(5, Math.min(11, w / 4, h / 4));
  const [cx, cy] = [Math.max(x + w / 2, x + w - r - 8), Math.min(y + h / 2, y + r + 8)];
  pen.beginPath();
  pen.arc(cx, cy, r, 0, 2 * Math.PI);
  pen.fillStyle = colour;
  pen.fill();
  pen.strokeStyle = '#fff';
  pen.lineWidth = 2;
  pen.stroke();
  pen.beginPath();
  const d = r * 0.4;
  if (grave) {
    pen.moveTo(cx - d, cy - d);
    pen.lineTo(cx + d, cy + d);
    pen.moveTo(cx + d, cy - d);
    pen.lineTo(cx - d, cy + d);
  } else {
    pen.moveTo(cx, cy - r * 0.55);
    pen.lineTo(cx, cy + r * 0.15);
    pen.moveTo(cx, cy + r * 0.45);
    pen.lineTo(cx, cy + r * 0.5);
  }
  pen.stroke();
}
