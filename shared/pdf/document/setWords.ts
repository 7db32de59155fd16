// Words of a page set into lines, and lines into paragraphs, lists and tables.
import { breakLines } from '../../marks/breakLines.ts';
import { ASCENT, DESCENT, type Measure } from '../../marks/mark.ts';
import { below, beside, indent, type PageBlock } from './block.ts';
import { box, type InkTone, line, moveShapes, type Weight, type WordsShape } from './shape.ts';

/** How long lines of each weight are, at size 1. */
export type Measures = Readonly<Record<Weight, Measure>>;

/** How words look. */
export interface Style {
  readonly size: number;
  readonly weight: Weight;
  readonly tone: InkTone;
}

/** From baseline to baseline, as a share of the size. */
const LEADING = 1.28;

/** One line of words as long as they are. */
export function setLine(words: string, style: Style, measures: Measures): PageBlock {
  const w = measures[style.weight](words) * style.size;
  const shape: WordsShape = {
    kind: 'words',
    words,
    at: { x: 0, y: -ASCENT * style.size },
    head: 0,
    ...style,
  };
  return { w, h: (ASCENT + DESCENT) * style.size, shapes: [shape] };
}

/** The words cut to this width, the cut shown by an ellipsis; nothing where not even one letter has room. */
export function fitWords(words: string, style: Style, width: number, measures: Measures): string {
  const fits = (text: string) => measures[style.weight](text) * style.size <= width;
  if (fits(words)) return words;
  const letters = [...words];
  let [least, most] = [0, letters.length];
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (fits(`${letters.slice(0, middle).join('').trimEnd()}…`)) least = middle;
    else most = middle - 1;
  }
  return least === 0 ? '' : `${letters.slice(0, least).join('').trimEnd()}…`;
}

/** Words in lines within `width`. A word that is longer than a line, such as the name of a file, is broken too. */
export function setParagraph(words: string, style: Style, width: number, measures: Measures): PageBlock {
  return setLines(words, style, width, measures, () => 0);
}

/** A paragraph whose lines stand in the middle of `width`. */
export function setCentred(words: string, style: Style, width: number, measures: Measures): PageBlock {
  return setLines(words, style, width, measures, (line) => (width - line) / 2);
}

/** `startOf`: where a line of a given length begins. */
function setLines(
  words: string,
  style: Style,
  width: number,
  measures: Measures,
  startOf: (length: number) => number,
): PageBlock {
  const measure = measures[style.weight];
  const column = width / style.size;
  const broken = words.split(' ').flatMap((word) => breakWord(word, column, measure));
  const lines = breakLines(broken.join(' '), column, measure).map((l) => setLine(l, style, measures));
  const [last] = lines.slice(-1);
  const step = LEADING * style.size;
  const shapes = lines.flatMap((l, i) => moveShapes(l.shapes, startOf(l.w), -i * step));
  return { w: width, h: (lines.length - 1) * step + (last?.h ?? 0), shapes };
}

/** A word in parts that each fit a column; after a hyphen or an underscore if one is near enough to the end. */
function breakWord(word: string, column: number, measure: Measure): readonly string[] {
  if (measure(word) <= column) return [word];
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && measure(part + letter) > column) {
      const seam = Math.max(part.lastIndexOf('-'), part.lastIndexOf('_')) + 1;
      const cut = seam > part.length / 2 ? seam : part.length;
      parts.push(part.slice(0, cut));
      part = part.slice(cut);
    }
    part += letter;
  }
  return [...parts, part];
}

/** A paragraph behind a box that is ticked by hand. */
export function setTick(words: string, style: Style, width: number, measures: Measures): PageBlock {
  const side = style.size * 0.95;
  const tick = box({ x: 0.5, y: -side - 1, w: side, h: side }, { stroke: { tone: 'ink', width: 0.9 } });
  const aside = side * 1.75;
  const said = indent(setParagraph(words, style, width - aside, measures), aside);
  return { w: width, h: said.h, shapes: [tick, ...said.shapes] };
}

/** A row of a table: each cell a block, ruled all around, with room about what is in it. */
export function setRow(cells: readonly PageBlock[], widths: readonly number[], least = 0): PageBlock {
  const pad = 4;
  const h = Math.max(least, ...cells.map((c) => c.h + 2 * pad));
  const ruled = cells.map((cell, i): PageBlock => {
    const w = widths[i] ?? 0;
    const frame = box({ x: 0, y: -h, w, h }, { stroke: { tone: 'ink', width: 0.6 } });
    const inner = below([{ w: 0, h: 0, shapes: [] }, indent(cell, pad)], pad);
    return { w, h, shapes: [frame, ...inner.shapes] };
  });
  return beside(ruled, 0);
}

/** A heading with a rule above it. */
export function setHeading(words: string, style: Style, width: number, measures: Measures): PageBlock {
  const rule: PageBlock = {
    w: width,
    h: 3,
    shapes: [line({ x: 0, y: -0.5 }, { x: width, y: -0.5 }, { tone: 'ink', width: 1 })],
  };
  return below([rule, setParagraph(words, style, width, measures)], 1);
}
