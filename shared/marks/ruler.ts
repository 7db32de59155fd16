// The ruler: 50 mm and 2 in, true to size, which shows at once whether a driver has scaled the sheet.

import type { Point } from '../geometry/space.ts';
import { POINTS_PER } from '../units/length.ts';
import { ASCENT, DESCENT, HAIRLINE, type Mark, type Measure, type Stamp } from './mark.ts';

const MM = POINTS_PER.mm;
const LONGEST_TICK = 5;
/** Between a tick and its label. */
const GAP = 1.5;
const LABEL = 5.5;
const CAPTION = 6;
/** Height of a capital or a figure as a share of the type's size. */
const CAP = 0.73;
/** Room beside the ends, so that the outer labels stay inside. */
const END = 3;
/** From the baseline to the furthest ink on either side. */
const REACH = 12;

/** One division of a scale: where it is from the zero, how long its tick is, and its label if it has one. */
interface Tick {
  readonly at: number;
  readonly length: number;
  readonly label?: string;
}

const MILLIMETRES: readonly Tick[] = Array.from({ length: 51 }, (_, mm) => {
  if (mm % 10 === 0) return { at: mm * MM, length: LONGEST_TICK, label: `${mm}` };
  return { at: mm * MM, length: mm % 5 === 0 ? 3.6 : 2.2 };
});

const INCHES: readonly Tick[] = Array.from({ length: 17 }, (_, eighth) => {
  if (eighth % 8 === 0) return { at: eighth * 9, length: LONGEST_TICK, label: `${eighth / 8}` };
  return { at: eighth * 9, length: eighth % 4 === 0 ? 3.6 : 2.2 };
});

/**
 * The ruler, millimetres above its line and inches below it, with what to do: said beside it, or above it where a
 * margin is short.
 */
export function drawRulers(measure: Measure): readonly Stamp[] {
  const end = END + 2 * POINTS_PER.in;
  const beside = end + 2 * END;
  const [first, second] = ['measure me: 50 mm', 'and 2 in'] as const;
  const width = Math.max(measure(first), measure(second)) * CAPTION;
  const line = (ASCENT + DESCENT) * CAPTION;
  const scales = drawScales(measure);
  return [
    {
      size: { w: beside + width, h: 2 * REACH },
      marks: [
        ...scales,
        setWords(first, CAPTION, beside, REACH + 2, measure),
        setWords(second, CAPTION, beside, REACH - 2 - CAP * CAPTION, measure),
      ],
    },
    {
      size: { w: end + END, h: 2 * REACH + line },
      marks: [
        ...scales,
        setWords(`${first} ${second}`, CAPTION, END, 2 * REACH + DESCENT * CAPTION, measure),
      ],
    },
  ];
}

/** Both scales, their common zero at (END, REACH). */
function drawScales(measure: Measure): readonly Mark[] {
  const scale = (ticks: readonly Tick[], way: 1 | -1): readonly Mark[] =>
    ticks.flatMap(({ at, length, label }) => {
      const x = END + at;
      const tick = stroke({ x, y: REACH }, { x, y: REACH + way * length });
      if (label === undefined) return [tick];
      const y = way === 1 ? REACH + LONGEST_TICK + GAP : REACH - LONGEST_TICK - GAP - CAP * LABEL;
      return [tick, setWords(label, LABEL, x - (measure(label) * LABEL) / 2, y, measure)];
    });
  const line = stroke({ x: END, y: REACH }, { x: END + 2 * POINTS_PER.in, y: REACH });
  return [line, ...scale(MILLIMETRES, 1), ...scale(INCHES, -1)];
}

function stroke(from: Point, to: Point): Mark {
  return { kind: 'line', from, to, width: HAIRLINE, ink: 'black' };
}

function setWords(words: string, size: number, x: number, y: number, measure: Measure): Mark {
  return { kind: 'words', words, at: { x, y }, size, width: measure(words) * size, head: 0, ink: 'black' };
}
