// How a run sheet is set: what is read at arm's length, and what is only looked up.
import { ASCENT } from '../marks/mark.ts';
import { below, beside, indent, type PageBlock, place, space } from '../pdf/document/block.ts';
import type { Furniture } from '../pdf/document/fillPages.ts';
import { fitWords, type Measures, type Style, setLine, setParagraph } from '../pdf/document/setWords.ts';
import { box } from '../pdf/document/shape.ts';

/** Type that is read while the hands work, in pt. */
export const BODY: Style = { size: 10, weight: 'plain', tone: 'ink' };
export const STRONG: Style = { ...BODY, weight: 'strong' };
export const HEADING: Style = { size: 12, weight: 'strong', tone: 'ink' };
export const TITLE: Style = { size: 19, weight: 'strong', tone: 'ink' };
export const NOTE: Style = { size: 8.5, weight: 'plain', tone: 'ink' };
const CAUTION: Style = { size: 8, weight: 'plain', tone: 'ink' };
const FIGURE: Style = { size: 17, weight: 'strong', tone: 'ink' };

/** A fact that is seen from afar: what it is, its figure, and what is to be said of it. */
export interface Fact {
  readonly label: string;
  readonly figure: string;
  readonly note: string;
}

/** Facts in boxes of one height, across this width. */
export function setFacts(facts: readonly Fact[], width: number, measures: Measures): PageBlock {
  const gap = 6;
  const w = (width - gap * (facts.length - 1)) / facts.length;
  const inner = w - 12;
  const set = facts.map(({ label, figure, note }) =>
    below(
      [
        setLine(fitWords(label, NOTE, inner, measures), NOTE, measures),
        setFigure(figure, inner, measures),
        setParagraph(note, NOTE, inner, measures),
      ],
      2,
    ),
  );
  const h = Math.max(...set.map((block) => block.h)) + 10;
  return beside(
    set.map((block): PageBlock => {
      const frame = box({ x: 0, y: -h, w, h }, { stroke: { tone: 'ink', width: 1 } });
      return { w, h, shapes: [frame, ...indent(below([space(0), block], 5), 6).shapes] };
    }),
    gap,
  );
}

/** A figure as large as its box lets it be. */
function setFigure(figure: string, width: number, measures: Measures): PageBlock {
  const long = measures[FIGURE.weight](figure);
  const size = Math.max(10, Math.min(FIGURE.size, width / long));
  const style = { ...FIGURE, size };
  const set = setLine(fitWords(figure, style, width, measures), style, measures);
  // Figures of different sizes stand on one line.
  const drop = ASCENT * (FIGURE.size - size);
  return { w: set.w, h: set.h + drop, shapes: below([space(drop), set], 0).shapes };
}

/** Cautions side by side: boxed, each with a sign, so that they are not passed over. */
export function setCautions(cautions: readonly string[], width: number, measures: Measures): PageBlock {
  const pad = 5;
  const sign = 16;
  const gap = 6;
  const w = (width - gap * (cautions.length - 1)) / cautions.length;
  const said = cautions.map((words) => setParagraph(words, CAUTION, w - 2 * pad - sign, measures));
  const h = Math.max(...said.map((s) => s.h)) + 2 * pad;
  const mark = setLine('!', { ...TITLE, size: 15, tone: 'paper' }, measures);
  return beside(
    said.map((words): PageBlock => {
      const shapes = [
        box({ x: 0, y: -h, w: sign, h }, { fill: 'ink' }),
        box({ x: 0, y: -h, w, h }, { stroke: { tone: 'ink', width: 1 } }),
        ...place(mark, (sign - mark.w) / 2, -(h - mark.h) / 2),
        ...place(words, sign + pad, -pad),
      ];
      return { w, h, shapes };
    }),
    gap,
  );
}

/** The line at the head of every page, and the empty foot. */
export function furnitureOf(
  kind: string,
  title: string,
  day: string,
  width: number,
  measures: Measures,
): Furniture {
  return {
    head: (page, pages) => {
      const right = setLine(`${day} · page ${page} of ${pages}`, NOTE, measures);
      const room = width - right.w - 12;
      const left = setLine(fitWords(`${kind} · ${title}`, NOTE, room, measures), NOTE, measures);
      return {
        w: width,
        h: left.h + 8,
        shapes: [...left.shapes, ...indent(right, width - right.w).shapes],
      };
    },
    foot: () => space(0),
  };
}
