// The ruler: 50 mm and 2 in, true to size, which shows at once whether a driver has scaled the sheet.

import type { Point } from '../geometry/space.ts';
import { POINTS_PER } from '../units/length.ts';
import { ASCENT, DESCENT, HAIRLINE_PT, type Mark, type Measure, type Stamp } from './mark.ts';

const MM = POINTS_PER.mm;
const LONGEST_TICK_PT = 5;
/** Between a tick and its label. */
const GAP_PT = 1.5;
const LABEL_TYPE_PT = 5.5;
const CAPTION_TYPE_PT = 6;
/** Height of a capital or a figure as a share of the type's size. */
const CAP_HEIGHT_SHARE = 0.73;
/** Room beside the ends, so that the outer labels stay inside. */
const END_GAP_PT = 3;
/** From the baseline to the furthest ink on either side. */
const RULER_HEIGHT_PT = 12;

/** One division of a scale: where it is from the zero, how long its tick is, and its label if it has one. */
interface Tick {
  readonly at: number;
  readonly length: number;
  readonly label?: string;
}

const MILLIMETRES: readonly Tick[] = Array.from({ length: 51 }, (_, mm) => {
  if (mm % 10 === 0) return { at: mm * MM, length: LONGEST_TICK_PT, label: `${mm}` };
  return { at: mm * MM, length: mm % 5 === 0 ? 3.6 : 2.2 };
});

const INCHES: readonly Tick[] = Array.from({ length: 17 }, (_, eighth) => {
  if (eighth % 8 === 0) return { at: eighth * 9, length: LONGEST_TICK_PT, label: `${eighth / 8}` };
  return { at: eighth * 9, length: eighth % 4 === 0 ? 3.6 : 2.2 };
});

/**
 * The ruler, millimetres above its line and inches below it, with what to do: said beside it, or above it where a
 * margin is short.
 */
export function drawRulers(measure: Measure): readonly Stamp[] {
  const end = END_GAP_PT + 2 * POINTS_PER.in;
  const beside = end + 2 * END_GAP_PT;
  const [first, second] = ['measure me: 50 mm', 'and 2 in'] as const;
  const width = Math.max(measure(first), measure(second)) * CAPTION_TYPE_PT;
  const line = (ASCENT + DESCENT) * CAPTION_TYPE_PT;
  const scales = drawScales(measure);
  return [
    {
      size: { w: beside + width, h: 2 * RULER_HEIGHT_PT },
      marks: [
        ...scales,
        setWords(first, CAPTION_TYPE_PT, beside, RULER_HEIGHT_PT + 2, measure),
        setWords(
          second,
          CAPTION_TYPE_PT,
          beside,
          RULER_HEIGHT_PT - 2 - CAP_HEIGHT_SHARE * CAPTION_TYPE_PT,
          measure,
        ),
      ],
    },
    {
      size: { w: end + END_GAP_PT, h: 2 * RULER_HEIGHT_PT + line },
      marks: [
        ...scales,
        setWords(
          `${first} ${second}`,
          CAPTION_TYPE_PT,
          END_GAP_PT,
          2 * RULER_HEIGHT_PT + DESCENT * CAPTION_TYPE_PT,
          measure,
        ),
      ],
    },
  ];
}

/** Both scales, their common zero at (END, REACH). */
function drawScales(measure: Measure): readonly Mark[] {
  const scale = (ticks: readonly Tick[], way: 1 | -1): readonly Mark[] =>
    ticks.flatMap(({ at, length, label }) => {
      const x = END_GAP_PT + at;
      const tick = stroke({ x, y: RULER_HEIGHT_PT }, { x, y: RULER_HEIGHT_PT + way * length });
      if (label === undefined) return [tick];
      const y =
        way === 1
          ? RULER_HEIGHT_PT + LONGEST_TICK_PT + GAP_PT
          : RULER_HEIGHT_PT - LONGEST_TICK_PT - GAP_PT - CAP_HEIGHT_SHARE * LABEL_TYPE_PT;
      return [tick, setWords(label, LABEL_TYPE_PT, x - (measure(label) * LABEL_TYPE_PT) / 2, y, measure)];
    });
  const line = stroke(
    { x: END_GAP_PT, y: RULER_HEIGHT_PT },
    { x: END_GAP_PT + 2 * POINTS_PER.in, y: RULER_HEIGHT_PT },
  );
  return [line, ...scale(MILLIMETRES, 1), ...scale(INCHES, -1)];
}

function stroke(from: Point, to: Point): Mark {
  return { kind: 'line', from, to, width: HAIRLINE_PT, ink: 'black' };
}

function setWords(words: string, size: number, x: number, y: number, measure: Measure): Mark {
  return { kind: 'words', words, at: { x, y }, size, width: measure(words) * size, head: 0, ink: 'black' };
}
