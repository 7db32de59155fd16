// The lead-edge bar: which edge of the sheet enters the printer first, told so that it is seen at arm's length.
import type { Form } from '../layout/placement.ts';
import { ASCENT, DESCENT, type Mark, type Measure, type Stamp } from './mark.ts';

/** Heights the bar may have, in pt, the best first; below the last its words can no longer be read. */
const HEIGHTS = [16, 12, 9];

/** The type of the bar, and its arrows, as shares of its height. */
const TYPE_SHARE_OF_BAR = 0.6;
const ARROW = { width: 0.6, height: 0.7 };

/** The sides a form is printed on, in words. */
export function sideWords(form: Form): string {
  const [first, second] = form.sides;
  return second === undefined ? `side ${first}` : 'both sides';
}

/**
 * The bar in every height it may have: solid black, with its words and a feed arrow at either end knocked out. The
 * arrows point to the top of the bar.
 */
export function leadBars(form: Form, measure: Measure): readonly Stamp[] {
  const words = `LEAD EDGE · ${sideWords(form)}`;
  return HEIGHTS.map((h) => {
    const size = TYPE_SHARE_OF_BAR * h;
    const width = measure(words) * size;
    const pad = h * 0.5;
    const arrow = ARROW.width * h;
    const w = width + 2 * arrow + 4 * pad;
    const baseline = (h - (ASCENT - DESCENT) * size) / 2;
    const marks: Mark[] = [
      { kind: 'shape', corners: corners(0, 0, w, h), ink: 'black' },
      drawArrow(pad, h),
      {
        kind: 'words',
        words,
        at: { x: 2 * pad + arrow, y: baseline },
        size,
        width,
        head: 0,
        ink: 'paper',
      },
      drawArrow(w - pad - arrow, h),
    ];
    return { size: { w, h }, marks };
  });
}

/** An arrow that points up, its box starting at `x`, in the middle of a bar of height `h`. */
function drawArrow(x: number, h: number): Mark {
  const w = ARROW.width * h;
  const bottom = (h * (1 - ARROW.height)) / 2;
  const top = h - bottom;
  const neck = top - w * 0.6;
  const corner = (across: number, y: number) => ({ x: x + across * w, y });
  return {
    kind: 'shape',
    corners: [
      corner(0.5, top),
      corner(0, neck),
      corner(0.3, neck),
      corner(0.3, bottom),
      corner(0.7, bottom),
      corner(0.7, neck),
      corner(1, neck),
    ],
    ink: 'paper',
  };
}

function corners(x: number, y: number, w: number, h: number) {
  return [
    { x, y },
    { x: x + w, y },
    { x: x + w, y: y + h },
    { x, y: y + h },
  ];
}
