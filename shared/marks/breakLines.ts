// Words broken into lines.
import type { Measure } from './mark.ts';

/** Words in lines that are no longer than the column, broken between words where that can be done. */
export function breakLines(words: string, column: number, measure: Measure): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && measure(`${last} ${word}`) <= column)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
