// The ruler: 50 mm and 2 in, true to size, which shows at once whether a driver has scaled the sheet.
import { POINTS_PER } from '../units/length.ts';
import { HAIRLINE, type Mark, type Measure, type Stamp } from './mark.ts';

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

/** The ruler: millimetres above its line, inches below it, and beside it what to do. */
export function drawRuler(measure: Measure): Stamp {
  const zero = { x: END, y: REACH };
  const end = zero.x + 2 * POINTS_PER.in;
  const say = (words: string, size: number, x: number, y: number): Mark => ({
    kind: 'words',
    words,
    at: { x, y },
    size,
    width: measure(words) * size,
    head: 0,
    ink: 'black',
  });
  const stroke = (x1: number, y1: number, x2: number, y2: number): Mark => ({
    kind: 'line',
    from: { x: x1, y: y1 },
    to: { x: x2, y: y2 },
    width: HAIRLINE,
    ink: 'black',
  });
  const scale = (ticks: readonly Tick[], way: 1 | -1): Mark[] =>
    ticks.flatMap(({ at, length, label }) => {
      const x = zero.x + at;
      const tick = stroke(x, zero.y, x, zero.y + way * length);
      if (label === undefined) return [tick];
      const y = way === 1 ? zero.y + LONGEST_TICK + GAP : zero.y - LONGEST_TICK - GAP - CAP * LABEL;
      return [tick, say(label, LABEL, x - (measure(label) * LABEL) / 2, y)];
    });
  const captions = ['measure me: 50 mm', 'and 2 in'] as const;
  const captionAt = end + 2 * END;
  const marks = [
    stroke(zero.x, zero.y, end, zero.y),
    ...scale(MILLIMETRES, 1),
    ...scale(INCHES, -1),
    say(captions[0], CAPTION, captionAt, zero.y + 2),
    say(captions[1], CAPTION, captionAt, zero.y - 2 - CAP * CAPTION),
  ];
  const width = Math.max(...captions.map(measure)) * CAPTION;
  return { size: { w: captionAt + width, h: 2 * REACH }, marks };
}
