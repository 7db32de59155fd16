// Drawing the rulers along the window, in the unit that the person reads, counted from the left edge and from the tail.
import type { View } from '../../../shared/bench/view.ts';
import type { Size } from '../../../shared/geometry/space.ts';
import { POINTS_PER, type Unit } from '../../../shared/units/length.ts';
import { showShortNumber } from '../../../shared/units/show.ts';
import type { Inks } from '../../sheet/paint/inks.ts';
import { crisp, type Pen, pointOnScreen, TINY_TYPE } from '../../sheet/paint/pen.ts';

/** How thick the rulers are, in px. */
export const RULER_PX = 22;

/** The parts a unit is told in, from coarse to fine: how many of the unit a numbered stroke is, and its parts. */
const STEPS: Readonly<Record<Unit, readonly (readonly [number, number])[]>> = {
  in: [
    [0.25, 4],
    [0.5, 4],
    [1, 8],
    [2, 8],
    [5, 5],
    [10, 10],
    [20, 4],
  ],
  mm: [
    [1, 10],
    [5, 5],
    [10, 10],
    [20, 4],
    [50, 5],
    [100, 10],
    [200, 4],
    [500, 5],
  ],
  pt: [
    [6, 6],
    [12, 6],
    [36, 6],
    [72, 6],
    [144, 4],
    [360, 5],
    [720, 10],
  ],
};

const MIN_NUMBER_DISTANCE_PX = 48;

export function paintRulers(pen: Pen, view: View, window: Size, unit: Unit, inks: Inks): void {
  const pxPer = POINTS_PER[unit] * view.zoom;
  const steps = STEPS[unit];
  const [step, parts] = steps.find(([n]) => n * pxPer >= MIN_NUMBER_DISTANCE_PX) ?? steps.at(-1) ?? [1, 1];
  pen.fillStyle = inks.panel;
  pen.fillRect(0, 0, window.w, RULER_PX);
  pen.fillRect(0, 0, RULER_PX, window.h);
  pen.font = TINY_TYPE;
  pen.fillStyle = inks.ink;
  pen.strokeStyle = inks.soft;
  pen.lineWidth = 1;

  const zero = pointOnScreen(view, { x: 0, y: 0 });
  const stroke = pxPer * (step / parts);
  const long = (n: number) => (n % parts === 0 ? RULER_PX : n % (parts / 2) === 0 ? 8 : 5);
  const number = (n: number) => showShortNumber((n * step) / parts, 3).replace('-', '\u2212');

  pen.beginPath();
  pen.textAlign = 'left';
  pen.textBaseline = 'top';
  for (let n = Math.ceil((RULER_PX - zero.x) / stroke); zero.x + n * stroke < window.w; n += 1) {
    const x = crisp(zero.x + n * stroke);
    pen.moveTo(x, RULER_PX);
    pen.lineTo(x, RULER_PX - long(n));
    if (n % parts === 0) pen.fillText(number(n), x + 3, 3);
  }
  for (let n = Math.ceil((zero.y - window.h) / stroke); zero.y - n * stroke > RULER_PX; n += 1) {
    const y = crisp(zero.y - n * stroke);
    pen.moveTo(RULER_PX, y);
    pen.lineTo(RULER_PX - long(n), y);
    if (n % parts !== 0) continue;
    pen.save();
    pen.translate(3, y - 3);
    pen.rotate(-Math.PI / 2);
    pen.fillText(number(n), 0, 0);
    pen.restore();
  }
  pen.moveTo(0, RULER_PX + 0.5);
  pen.lineTo(window.w, RULER_PX + 0.5);
  pen.moveTo(RULER_PX + 0.5, 0);
  pen.lineTo(RULER_PX + 0.5, window.h);
  pen.stroke();
  pen.fillStyle = inks.panel;
  pen.fillRect(0, 0, RULER_PX, RULER_PX);
  pen.fillStyle = inks.soft;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.fillText(unit, RULER_PX / 2, RULER_PX / 2 + 1);
}
