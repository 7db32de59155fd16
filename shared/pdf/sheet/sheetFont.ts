// The type face of the marks: how long its lines are, and what stands for characters that it lacks.
import * as fontkit from '@cantoo/fontkit';
import type { Measure } from '../../marks/mark.ts';
import { runsOf } from './readingOrder.ts';

/** Stands for every character that the face lacks: a white square. */
const BOX = '□';

/** Characters that only steer, such as soft hyphens; the sign that parts two letters in Persian stays. */
const UNSEEN = /(?!\u200c)\p{Default_Ignorable_Code_Point}/u;

/** Words made ready for setting. */
export interface SettableWords {
  /** To be set one after the other from left to right. */
  readonly runs: readonly string[];
  /** Characters that the face lacks; a box stands for each. */
  readonly lacking: readonly string[];
}

/** A TrueType face that the marks are set in. */
export interface SheetFont {
  /** The whole font file, from which the glyphs used are embedded. */
  readonly bytes: Uint8Array;
  /** Gives a document this face as it was opened, so that not every sheet reads the whole file again. */
  readonly fontkit: typeof fontkit;
  readonly measure: Measure;
  readonly settable: (words: string) => SettableWords;
}

/**
 * Opens a font file that the host has read.
 *
 * @throws when the bytes are not one TrueType or OpenType face with a white square: the face comes with the program.
 */
export function openSheetFont(bytes: Uint8Array): SheetFont {
  const font = fontkit.create(bytes);
  if (font === null || !('glyphForCodePoint' in font))
    throw new Error('The face of the marks is not one font');
  const has = (character: string) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
  if (!has(BOX)) throw new Error('The face of the marks has no box for characters that it lacks');

  const settable = remember((words: string): SettableWords => {
    const lacking = new Set<string>();
    const set = Array.from(words, (character) => {
      if (UNSEEN.test(character)) return '';
      if (has(character)) return character;
      lacking.add(character);
      return BOX;
    });
    const runs = runsOf(set.join('')).flatMap((run) => {
      // Figures of a right-to-left script would be laid out backwards as one run, but not one by one.
      const backwards = run.read === 'left-to-right' && font.layout(run.words).direction === 'rtl';
      return backwards ? [...run.words] : [run.words];
    });
    return { runs, lacking: [...lacking] };
  });
  const lengthOf = (run: string) =>
    font.layout(run).glyphs.reduce((length, glyph) => length + glyph.advanceWidth, 0);
  return {
    bytes,
    fontkit: { ...fontkit, create: () => font },
    settable,
    measure: remember(
      (words) => settable(words).runs.reduce((length, run) => length + lengthOf(run), 0) / font.unitsPerEm,
    ),
  };
}

/** How many words are remembered: far more than the sheets of one job hold. */
const MAX_WIDTHS_KEPT = 1000;

/** Marks of every form say the same few words, so that what was found of them once is kept. */
function remember<T>(find: (words: string) => T): (words: string) => T {
  const known = new Map<string, T>();
  return (words) => {
    const before = known.get(words);
    if (before !== undefined) return before;
    if (known.size >= MAX_WIDTHS_KEPT) known.clear();
    const found = find(words);
    known.set(words, found);
    return found;
  };
}
