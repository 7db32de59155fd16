// Drawing the sheet as it lies: paper, the border that cannot be printed, the lead edge, the feed and the turning axis.
import type { View } from '../../../shared/bench/view.ts';
import { wholeOf } from '../../../shared/geometry/rect.ts';
import { printableArea, type SheetEdges } from '../../../shared/geometry/sheet.ts';
import type { Side, Size } from '../../../shared/geometry/space.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { Inks } from './inks.ts';
import { addRect, crisp, hatchPath, onScreen, type Pen, SMALL_TYPE } from './pen.ts';

export interface SheetSeen {
  readonly size: Size;
  readonly unprintable: SheetEdges;
  readonly turn: Turn | undefined;
}

export function paintPaper(pen: Pen, { size, unprintable }: SheetSeen, view: View, inks: Inks): void {
  const whole = onScreen(view, wholeOf<Side>(size));
  pen.fillStyle = inks.paper;
  pen.shadowColor = 'rgb(0 0 0 / 35%)';
  pen.shadowBlur = 14;
  pen.shadowOffsetY = 3;
  pen.fillRect(whole.x, whole.y, whole.w, whole.h);
  pen.shadowColor = 'transparent';

  const printable = onScreen(view, printableArea<Side>(size, unprintable));
  pen.beginPath();
  addRect(pen, whole);
  addRect(pen, printable);
  hatchPath(pen, whole, 7, 'rgb(0 0 0 / 32%)');
  pen.beginPath();
  addRect(pen, printable);
  pen.strokeStyle = 'rgb(0 0 0 / 45%)';
  pen.lineWidth = 1;
  pen.stroke();
}

/** The lead edge as a bar beyond the paper, and the way the sheet goes into the printer. */
export function paintFeed(pen: Pen, size: Size, view: View, inks: Inks): void {
  const { x, y, w } = onScreen(view, wholeOf<Side>(size));
  const middle = x + w / 2;
  pen.fillStyle = inks.ink;
  pen.fillRect(x, y - 7, w, 3);
  pen.beginPath();
  pen.moveTo(middle - 7, y - 14);
  pen.lineTo(middle, y - 26);
  pen.lineTo(middle + 7, y - 14);
  pen.closePath();
  pen.fill();
  pen.font = SMALL_TYPE;
  pen.textBaseline = 'middle';
  pen.textAlign = 'left';
  pen.fillText('lead edge', middle + 14, y - 19);
  pen.textAlign = 'right';
  pen.fillText('feed', middle - 14, y - 19);
}

/** The axis about which the sheet is turned: a chain line from beyond one edge to beyond the other. */
export function paintAxis(pen: Pen, { size, turn }: SheetSeen, view: View): void {
  if (turn === undefined) return;
  const { x, y, w, h } = onScreen(view, wholeOf<Side>(size));
  pen.beginPath();
  if (turn === 'side-to-side') {
    pen.moveTo(crisp(x + w / 2), y);
    pen.lineTo(crisp(x + w / 2), y + h);
  } else {
    pen.moveTo(x, crisp(y + h / 2));
    pen.lineTo(x + w, crisp(y + h / 2));
  }
  pen.setLineDash([14, 4, 2, 4]);
  pen.lineWidth = 1;
  pen.strokeStyle = 'rgb(0 0 0 / 55%)';
  pen.stroke();
  pen.setLineDash([]);
}

/** The two edges by which the sheet is turned: a tab on each, pointing the way it is carried over. */
export function paintGrips(pen: Pen, { size, turn }: SheetSeen, view: View, inks: Inks): void {
  if (turn === undefined) return;
  const { x, y, w, h } = onScreen(view, wholeOf<Side>(size));
  const tabs =
    turn === 'side-to-side'
      ? ([
          [x - 11, y + h * 0.75, Math.PI],
          [x + w + 11, y + h * 0.75, 0],
        ] as const)
      : ([
          [x + w * 0.25, y - 16, -Math.PI / 2],
          [x + w * 0.25, y + h + 11, Math.PI / 2],
        ] as const);
  for (const [cx, cy, outwards] of tabs) {
    pen.save();
    pen.translate(cx, cy);
    pen.rotate(outwards);
    pen.beginPath();
    pen.roundRect(-8, -24, 16, 48, 5);
    pen.fillStyle = inks.panel;
    pen.fill();
    pen.strokeStyle = inks.line;
    pen.lineWidth = 1;
    pen.stroke();
    pen.beginPath();
    for (const at of [-14, 0, 14]) {
      pen.moveTo(2.5, at - 4);
      pen.lineTo(-2, at);
      pen.lineTo(2.5, at + 4);
    }
    pen.strokeStyle = inks.ink;
    pen.lineWidth = 1.5;
    pen.stroke();
    pen.restore();
  }
}
