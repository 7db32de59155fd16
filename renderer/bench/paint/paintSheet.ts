// Drawing the sheet as it lies: paper, the border that cannot be printed, the lead edge, the feed and the turning axis.
import type { View } from '../../../shared/bench/view.ts';
import { wholeOf } from '../../../shared/geometry/rect.ts';
import { printableArea, type SheetEdges } from '../../../shared/geometry/sheet.ts';
import type { Side, Size } from '../../../shared/geometry/space.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { Inks } from './inks.ts';
import { addRect, crisp, hatch, onScreen, type Paper, SMALL_TYPE } from './pen.ts';

export interface SheetSeen {
  readonly size: Size;
  readonly unprintable: SheetEdges;
  readonly turn: Turn | undefined;
}

export function paintPaper(paper: Paper, { size, unprintable }: SheetSeen, view: View, inks: Inks): void {
  const whole = onScreen(view, wholeOf<Side>(size));
  paper.fillStyle = inks.paper;
  paper.shadowColor = 'rgb(0 0 0 / 35%)';
  paper.shadowBlur = 14;
  paper.shadowOffsetY = 3;
  paper.fillRect(whole.x, whole.y, whole.w, whole.h);
  paper.shadowColor = 'transparent';

  const printable = onScreen(view, printableArea<Side>(size, unprintable));
  paper.beginPath();
  addRect(paper, whole);
  addRect(paper, printable);
  hatch(paper, whole, 7, 'rgb(0 0 0 / 32%)');
  paper.beginPath();
  addRect(paper, printable);
  paper.strokeStyle = 'rgb(0 0 0 / 45%)';
  paper.lineWidth = 1;
  paper.stroke();
}

/** The lead edge as a bar beyond the paper, and the way the sheet goes into the printer. */
export function paintFeed(paper: Paper, size: Size, view: View, inks: Inks): void {
  const { x, y, w } = onScreen(view, wholeOf<Side>(size));
  const middle = x + w / 2;
  paper.fillStyle = inks.ink;
  paper.fillRect(x, y - 7, w, 3);
  paper.beginPath();
  paper.moveTo(middle - 7, y - 14);
  paper.lineTo(middle, y - 26);
  paper.lineTo(middle + 7, y - 14);
  paper.closePath();
  paper.fill();
  paper.font = SMALL_TYPE;
  paper.textBaseline = 'middle';
  paper.textAlign = 'left';
  paper.fillText('lead edge', middle + 14, y - 19);
  paper.textAlign = 'right';
  paper.fillText('feed', middle - 14, y - 19);
}

/** The axis about which the sheet is turned: a chain line from beyond one edge to beyond the other. */
export function paintAxis(paper: Paper, { size, turn }: SheetSeen, view: View): void {
  if (turn === undefined) return;
  const { x, y, w, h } = onScreen(view, wholeOf<Side>(size));
  paper.beginPath();
  if (turn === 'side-to-side') {
    paper.moveTo(crisp(x + w / 2), y);
    paper.lineTo(crisp(x + w / 2), y + h);
  } else {
    paper.moveTo(x, crisp(y + h / 2));
    paper.lineTo(x + w, crisp(y + h / 2));
  }
  paper.setLineDash([14, 4, 2, 4]);
  paper.lineWidth = 1;
  paper.strokeStyle = 'rgb(0 0 0 / 55%)';
  paper.stroke();
  paper.setLineDash([]);
}

/** The two edges by which the sheet is turned: a tab on each, pointing the way it is carried over. */
export function paintGrips(paper: Paper, { size, turn }: SheetSeen, view: View, inks: Inks): void {
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
    paper.save();
    paper.translate(cx, cy);
    paper.rotate(outwards);
    paper.beginPath();
    paper.roundRect(-8, -24, 16, 48, 5);
    paper.fillStyle = inks.panel;
    paper.fill();
    paper.strokeStyle = inks.line;
    paper.lineWidth = 1;
    paper.stroke();
    paper.beginPath();
    for (const at of [-14, 0, 14]) {
      paper.moveTo(2.5, at - 4);
      paper.lineTo(-2, at);
      paper.lineTo(2.5, at + 4);
    }
    paper.strokeStyle = inks.ink;
    paper.lineWidth = 1.5;
    paper.stroke();
    paper.restore();
  }
}
