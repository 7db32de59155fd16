// Drawing guides and dimensions: the snap that holds with its name, and the margins that register the second pass.
import type { SheetAxis } from '../../../shared/bench/axis.ts';
import type { View } from '../../../shared/bench/view.ts';
import type { Point, Rect, Side, Size } from '../../../shared/geometry/space.ts';
import type { Unit } from '../../../shared/units/length.ts';
import { showLength } from '../../../shared/units/show.ts';
import { crisp, onScreen, type Pen, plate, pointOnScreen } from '../../sheet/paint/pen.ts';

/** A guide in the frame of the side that is looked at. */
export interface SeenGuide {
  readonly name: string;
  readonly axis: SheetAxis;
  readonly lines: readonly number[];
  readonly gaps: readonly { readonly from: number; readonly to: number }[];
}

const COLOURS = { plate: '#1d5a80', ink: '#fff' } as const;

/** What is dragged: the guides that hold it, its place on the side that is looked at, and where that is in words. */
export interface SeenDrag {
  readonly guides: readonly SeenGuide[];
  readonly box: Rect<Side>;
  readonly says: string;
}

/** Guides over the whole sheet; lengths across the middle of what is dragged; names above it and its place below. */
export function paintGuides(
  pen: Pen,
  { guides, box, says }: SeenDrag,
  sheet: Size,
  unit: Unit,
  view: View,
): void {
  const whole = onScreen(view, { x: 0, y: 0, w: sheet.w, h: sheet.h });
  const dragged = onScreen(view, box);
  pen.strokeStyle = COLOURS.plate;
  for (const { axis, lines, gaps } of guides) {
    pen.beginPath();
    for (const at of lines) {
      const { x, y } = pointOnScreen(view, { x: at, y: at });
      pen.moveTo(axis === 'x' ? crisp(x) : whole.x - 12, axis === 'x' ? whole.y - 12 : crisp(y));
      pen.lineTo(
        axis === 'x' ? crisp(x) : whole.x + whole.w + 12,
        axis === 'x' ? whole.y + whole.h + 12 : crisp(y),
      );
    }
    pen.lineWidth = 1;
    pen.setLineDash([]);
    pen.stroke();
    const across = axis === 'x' ? dragged.y + dragged.h / 2 : dragged.x + dragged.w / 2;
    const equal = gaps.length > 1;
    for (const gap of gaps) {
      paintLength(
        pen,
        axis,
        gap,
        across,
        `${equal ? '= ' : ''}${showLength(gap.to - gap.from, unit)}`,
        view,
        COLOURS,
      );
    }
  }
  let y = Math.max(16, dragged.y - 18);
  for (const { name } of guides) {
    plate(pen, name, dragged.x + dragged.w / 2, y, COLOURS);
    y -= 23;
  }
  const below = Math.min(whole.y + whole.h + 40, dragged.y + dragged.h + 20);
  plate(pen, says, dragged.x + dragged.w / 2, below, { plate: 'rgb(255 255 255 / 92%)', ink: '#1b1b1b' });
}

/** A length told by an arrow with two ends; `across` is where it lies on the other axis of the screen, in px. */
export function paintLength(
  pen: Pen,
  axis: SheetAxis,
  gap: { readonly from: number; readonly to: number },
  across: number,
  words: string,
  view: View,
  colours: { readonly plate: string; readonly ink: string },
): void {
  const start = pointOnScreen(view, { x: gap.from, y: gap.from })[axis];
  const end = pointOnScreen(view, { x: gap.to, y: gap.to })[axis];
  const at = (along: number, beside: number): Point<'screen'> =>
    axis === 'x' ? { x: along, y: crisp(across) + beside } : { x: crisp(across) + beside, y: along };
  const line = (...points: readonly Point<'screen'>[]) => {
    for (const [i, p] of points.entries()) {
      if (i === 0) pen.moveTo(p.x, p.y);
      else pen.lineTo(p.x, p.y);
    }
  };
  const tip = Math.sign(end - start) * Math.min(6, Math.abs(end - start) / 3);
  pen.beginPath();
  line(at(start, 0), at(end, 0));
  line(at(start, -6), at(start, 6));
  line(at(end, -6), at(end, 6));
  line(at(start + tip, -3), at(start, 0), at(start + tip, 3));
  line(at(end - tip, -3), at(end, 0), at(end - tip, 3));
  pen.strokeStyle = colours.plate;
  pen.lineWidth = 1.5;
  pen.stroke();
  const middle = at((start + end) / 2, axis === 'x' ? -16 : 44);
  plate(pen, words, middle.x, middle.y, colours);
}
