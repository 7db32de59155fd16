// Plain pages read back by pdf.js, which had no part in writing them: words with their lie, and boxes of paths.
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Words of one size and lie. The middle is that of the capitals. */
export interface ReadWords {
  readonly words: string;
  readonly size: number;
  /** Counter-clockwise, in degrees from 0 to 359. */
  readonly head: number;
  /** Where the baseline starts. */
  readonly at: { readonly x: number; readonly y: number };
  readonly length: number;
  readonly middle: { readonly x: number; readonly y: number };
}

export interface ReadBox {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface ReadPage {
  readonly size: { readonly w: number; readonly h: number };
  readonly words: readonly ReadWords[];
  /** The box around each path, in the order they are drawn. */
  readonly paths: readonly ReadBox[];
  /** All words, with single spaces. */
  readonly text: string;
}

/** The height of capitals as a share of the size of type. */
const CAPITAL = 0.73;

export async function readPages(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const task = getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const content = await page.getTextContent();
    const words = content.items.flatMap((item) =>
      'str' in item && item.str.trim() !== '' ? [wordsOf(item.str, item.transform, item.width)] : [],
    );
    const { fnArray, argsArray } = await page.getOperatorList();
    const paths = fnArray.flatMap((fn, i) => {
      if (fn !== OPS.constructPath) return [];
      const [left = 0, bottom = 0, right = 0, top = 0] = argsArray[i][2] as Float32Array;
      return [{ x: left, y: bottom, w: right - left, h: top - bottom }];
    });
    const [, , w = 0, h = 0] = page.view;
    const text = words
      .map((said) => said.words)
      .join(' ')
      .replace(/\s+/g, ' ');
    pages.push({ size: { w, h }, words, paths, text });
  }
  await task.destroy();
  return pages;
}

function wordsOf(words: string, transform: readonly number[], length: number): ReadWords {
  const [a = 1, b = 0, c = 0, d = 1, x = 0, y = 0] = transform;
  const size = Math.hypot(c, d);
  const head = (Math.round((Math.atan2(b, a) * 180) / Math.PI) + 360) % 360;
  const along = { x: a / size, y: b / size };
  const up = { x: c / size, y: d / size };
  const rise = (CAPITAL * size) / 2;
  const middle = {
    x: x + (along.x * length) / 2 + up.x * rise,
    y: y + (along.y * length) / 2 + up.y * rise,
  };
  return { words, size, head, at: { x, y }, length, middle };
}
