// Words of the marks set in a document: the glyphs used are embedded, and missing characters are remembered.
import type { PDFDocument, PDFRef } from 'pdf-lib';
import type { SheetFont } from './sheetFont.ts';

/** The face of the marks in one document. */
export interface SetType {
  /** None where no words are set. */
  readonly ref: PDFRef | undefined;
  /** The words as a hexadecimal string of this face; what it lacks becomes a box. */
  readonly encode: (words: string) => string;
  /** Once all is set: which characters were missing, in words. */
  readonly notices: () => readonly string[];
}

/** For a document in which no words are set. */
export const NO_TYPE: SetType = { ref: undefined, encode: () => '<>', notices: () => [] };

/**
 * Embeds a face into a document; only the glyphs that are set come along. `name` is the name under which they go: six
 * capitals mark a subset, and no two faces of one document have the same.
 */
export async function embedType(
  target: PDFDocument,
  font: SheetFont,
  name = 'TRNLAY+Marks',
): Promise<SetType> {
  target.registerFontkit(font.fontkit);
  const face = await target.embedFont(font.bytes, { subset: true, customName: name });
  const lacking = new Set<string>();
  return {
    ref: face.ref,
    encode(words) {
      const set = font.settable(words);
      for (const character of set.lacking) lacking.add(character);
      return `<${set.runs.map((run) => face.encodeText(run).asString()).join('')}>`;
    },
    notices() {
      if (lacking.size === 0) return [];
      const named = [...lacking].join(' ').replace(/\p{Surrogate}/gu, '\uFFFD');
      return [`The type of the marks lacks ${named}: a box stands for each.`];
    },
  };
}
