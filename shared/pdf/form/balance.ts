// Drawing operators that leave open what they opened, or close what they never opened, set right.
import { afterDelimited, afterPicture, at, characterClass } from './scan.ts';

/** What is opened and closed in a drawing: graphics states, text, marked content. */
type Opened = 'state' | 'text' | 'mark';

const CLOSERS: Readonly<Record<Opened, string>> = { state: 'Q', text: 'ET', mark: 'EMC' };

/**
 * The same drawing, fit to stand inside another: a `Q` or `EMC` that closes nothing is blanked, and graphics states,
 * text and marked content that are still open at the end are closed. Gives back the very same bytes where there is
 * nothing to set right.
 *
 * @source ISO 32000-1, 7.2 (characters, strings, comments), 8.4.2 (q, Q), 9.4.1 (BT, ET), 14.6 (BMC, BDC, EMC),
 * 8.9.7 (BI, ID, EI).
 */
export function balance(drawing: Uint8Array): Uint8Array {
  const open: Opened[] = [];
  const blanks: (readonly [from: number, to: number])[] = [];

  const close = (what: Opened, from: number, to: number) => {
    const at = open.lastIndexOf(what);
    if (at >= 0) open.splice(at, 1);
    else if (what !== 'text') blanks.push([from, to]);
  };

  for (let i = 0; i < drawing.length; ) {
    const byte = at(drawing, i);
    if (characterClass(byte) === 1) {
      i += 1;
    } else if (characterClass(byte) === 2) {
      i = afterDelimited(drawing, i);
    } else {
      const from = i;
      while (i < drawing.length && characterClass(at(drawing, i)) === 0) i += 1;
      switch (shortWord(drawing, from, i)) {
        case 'q':
          open.push('state');
          break;
        case 'Q':
          close('state', from, i);
          break;
        case 'BT':
          if (!open.includes('text')) open.push('text');
          break;
        case 'ET':
          close('text', from, i);
          break;
        case 'BMC':
        case 'BDC':
          open.push('mark');
          break;
        case 'EMC':
          close('mark', from, i);
          break;
        case 'ID':
          i = afterPicture(drawing, i);
          break;
      }
    }
  }
  return open.length === 0 && blanks.length === 0 ? drawing : mend(drawing, blanks, open.reverse());
}

function mend(
  drawing: Uint8Array,
  blanks: readonly (readonly [from: number, to: number])[],
  open: readonly Opened[],
): Uint8Array {
  const closing = open.map((what) => `\n${CLOSERS[what]}`).join('');
  const mended = new Uint8Array(drawing.length + closing.length);
  mended.set(drawing);
  for (const [from, to] of blanks) mended.fill(0x20, from, to);
  for (let i = 0; i < closing.length; i += 1) mended[drawing.length + i] = closing.charCodeAt(i);
  return mended;
}

/** How the words begin that matter here: q, Q, B.., E.., ID. */
const BEGINNINGS: ReadonlySet<number> = new Set(Array.from('qQBEI', (letter) => letter.charCodeAt(0)));

/** A word that may matter here, which has at most three characters. */
function shortWord(drawing: Uint8Array, from: number, to: number): string {
  if (to - from > 3 || !BEGINNINGS.has(at(drawing, from))) return '';
  return String.fromCharCode(...drawing.subarray(from, to));
}
