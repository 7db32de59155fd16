// Words of a page set into lines: none longer than its column, none lost.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ASCENT, DESCENT } from '../../../../shared/marks/mark.ts';
import {
  fitWords,
  setCentred,
  setParagraph,
  setRow,
  setTick,
} from '../../../../shared/pdf/document/setWords.ts';
import type { WordsShape } from '../../../../shared/pdf/document/shape.ts';

/** A face whose letters are all 0.6 wide. */
const measure = (words: string) => 0.6 * [...words].length;
const MEASURES = { plain: measure, strong: measure };
const BODY = { size: 10, weight: 'plain', tone: 'ink' } as const;
const linesOf = (shapes: readonly unknown[]) =>
  shapes.filter((shape): shape is WordsShape => (shape as WordsShape).kind === 'words');

const word = fc.string({ unit: fc.constantFrom('a', 'b', '-', '_', 'é'), minLength: 1, maxLength: 40 });

describe('a paragraph', () => {
  it('keeps every letter, in order, in lines no longer than its column', () => {
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 60, max: 300 }),
        (words, width) => {
          const lines = linesOf(setParagraph(words.join(' '), BODY, width, MEASURES).shapes);
          for (const { words: line } of lines) expect(measure(line) * 10).toBeLessThanOrEqual(width + 1e-9);
          expect(
            lines
              .map((l) => l.words)
              .join('')
              .replaceAll(' ', ''),
          ).toBe(words.join(''));
        },
      ),
    );
  });

  it('breaks a long name after a hyphen or an underscore if one is near the end of the line', () => {
    const lines = (words: string) =>
      linesOf(setParagraph(words, BODY, 60, MEASURES).shapes).map((l) => l.words);
    expect(lines('abcdef_ghijkl')).toEqual(['abcdef_', 'ghijkl']);
    expect(lines('ab_cdefghijkl')).toEqual(['ab_cdefghi', 'jkl']);
    expect(lines('abcdefghijkl mn')).toEqual(['abcdefghij', 'kl mn']);
  });

  it('stands 1.28 of its size from line to line, its first line below its top', () => {
    const { h, shapes } = setParagraph('aaaa bbbb', BODY, 30, MEASURES);
    const [first, second] = linesOf(shapes);
    expect(first!.at).toEqual({ x: 0, y: -ASCENT * 10 });
    expect(second!.at.y).toBeCloseTo(-ASCENT * 10 - 12.8);
    expect(h).toBeCloseTo(12.8 + (ASCENT + DESCENT) * 10);
  });

  it('can stand in the middle', () => {
    const [line] = linesOf(setCentred('aaaa', BODY, 100, MEASURES).shapes);
    expect(line!.at.x).toBeCloseTo((100 - 24) / 2);
  });
});

describe('words that are cut', () => {
  it('are the longest beginning that has room, with an ellipsis', () => {
    expect(fitWords('abcdefgh', BODY, 48, MEASURES)).toBe('abcdefgh');
    expect(fitWords('abcdefgh', BODY, 47, MEASURES)).toBe('abcdef…');
    expect(fitWords('abc efgh', BODY, 30, MEASURES)).toBe('abc…');
    expect(fitWords('abcdefgh', BODY, 12, MEASURES)).toBe('a…');
    expect(fitWords('abcdefgh', BODY, 11, MEASURES)).toBe('');
  });
});

describe('boxes about words', () => {
  it('stand before what is ticked off, and the words keep to the right of them', () => {
    const { w, shapes } = setTick('aaaa bbbb cccc', BODY, 60, MEASURES);
    expect(w).toBe(60);
    const lines = linesOf(shapes);
    expect(lines.length).toBeGreaterThan(1);
    for (const { at } of lines) expect(at.x).toBeCloseTo(9.5 * 1.75);
  });

  it('are as high as the tallest cell of a row, and stand where their columns do', () => {
    const low = setParagraph('aa', BODY, 20, MEASURES);
    const high = setParagraph('aa bb cc', BODY, 20, MEASURES);
    const row = setRow([low, high], [50, 30]);
    expect([row.w, row.h]).toEqual([80, high.h + 8]);
    expect(linesOf(row.shapes).map(({ at }) => at.x)).toEqual([4, 54, 54, 54]);
    expect(setRow([low], [50], 40).h).toBe(40);
  });
});
