// Words that mix reading directions, cut into runs in the order in which they stand from left to right.

const LETTER = '\\p{Script=Arabic}\\p{Script=Hebrew}\\p{Script=Nko}';

/** A stretch that is read from right to left: from its first such letter to its last, no others between them. */
const RIGHT_TO_LEFT = new RegExp(`([${LETTER}](?:[${LETTER}\\P{L}]*[${LETTER}\\p{M}])?)`, 'u');

/** A figure or a date, which is read from left to right everywhere. */
const FIGURES = /(\p{Nd}+(?:[.,:/-]\p{Nd}+)*)/u;

/** A stretch of words that is set on its own, and the way it is read. */
export interface TextRun {
  readonly words: string;
  readonly read: 'left-to-right' | 'right-to-left';
}

/**
 * The runs of a line that is read from left to right as a whole. Within a stretch that is read from right to left its
 * pieces stand in reverse, and its figures are read from left to right.
 *
 * @source The part of Unicode Standard Annex 9 (bidirectional text) that a title in one line needs; from memory.
 */
export function runsOf(line: string): readonly TextRun[] {
  return line
    .split(RIGHT_TO_LEFT)
    .flatMap((stretch, i): TextRun[] => {
      if (i % 2 === 0) return [{ words: stretch, read: 'left-to-right' }];
      const pieces = stretch.split(FIGURES).reverse();
      return pieces.map((words, n) => ({ words, read: n % 2 === 0 ? 'right-to-left' : 'left-to-right' }));
    })
    .filter((run) => run.words !== '');
}
