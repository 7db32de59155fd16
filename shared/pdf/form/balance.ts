// Drawing operators that leave open what they opened, or close what they never opened, set right.

/** What is opened and closed in a drawing: graphics states, text, marked content. */
type Opened = 'state' | 'text' | 'mark';

const CLOSERS: Readonly<Record<Opened, string>> = { state: 'Q', text: 'ET', mark: 'EMC' };

const WHITE = ' \t\n\f\r\0';
const DELIMITERS = '()<>[]{}/%';

/** For each byte: 0 for a regular character, 1 for white space, 2 for a delimiter. */
const KIND = Uint8Array.from({ length: 256 }, (_, byte) => {
  const character = String.fromCharCode(byte);
  if (WHITE.includes(character)) return 1;
  return DELIMITERS.includes(character) ? 2 : 0;
});

/** Bytes that a skipped inline picture must be followed by to have really ended. */
const LOOK_AHEAD = 12;

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
    if (kindOf(byte) === 1) {
      i += 1;
    } else if (kindOf(byte) === 2) {
      i = afterDelimited(drawing, i);
    } else {
      const from = i;
      while (i < drawing.length && kindOf(at(drawing, i)) === 0) i += 1;
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

/** Where what begins with this delimiter ends: a comment, a string, a name, or the delimiter alone. */
function afterDelimited(drawing: Uint8Array, start: number): number {
  switch (String.fromCharCode(at(drawing, start))) {
    case '%':
      return afterComment(drawing, start);
    case '(':
      return afterString(drawing, start);
    case '<':
      return at(drawing, start + 1) === 0x3c ? start + 2 : afterByte(drawing, start, 0x3e);
    case '/': {
      let end = start + 1;
      while (end < drawing.length && kindOf(at(drawing, end)) === 0) end += 1;
      return end;
    }
    default:
      return start + 1;
  }
}

function afterComment(drawing: Uint8Array, start: number): number {
  let end = start;
  while (end < drawing.length && at(drawing, end) !== 0x0a && at(drawing, end) !== 0x0d) end += 1;
  return end;
}

function afterString(drawing: Uint8Array, start: number): number {
  let depth = 0;
  for (let i = start; i < drawing.length; i += 1) {
    const byte = at(drawing, i);
    if (byte === 0x5c) i += 1;
    else if (byte === 0x28) depth += 1;
    else if (byte === 0x29) depth -= 1;
    if (depth === 0) return i + 1;
  }
  return drawing.length;
}

function afterByte(drawing: Uint8Array, start: number, byte: number): number {
  const found = drawing.indexOf(byte, start);
  return found < 0 ? drawing.length : found + 1;
}

/** The end of an inline picture: its `EI` stands alone, and what follows it is text and not picture. */
function afterPicture(drawing: Uint8Array, start: number): number {
  for (let i = start + 1; i < drawing.length - 1; i += 1) {
    const isEnd =
      at(drawing, i) === 0x45 &&
      at(drawing, i + 1) === 0x49 &&
      kindOf(at(drawing, i - 1)) === 1 &&
      (i + 2 === drawing.length || kindOf(at(drawing, i + 2)) === 1);
    if (isEnd && drawing.subarray(i + 2, i + 2 + LOOK_AHEAD).every(isText)) return i + 2;
  }
  return drawing.length;
}

function isText(byte: number): boolean {
  return (byte >= 0x20 && byte < 0x7f) || kindOf(byte) === 1;
}

function at(bytes: Uint8Array, i: number): number {
  return bytes[i] ?? 0;
}

function kindOf(byte: number): number {
  return KIND[byte] ?? 0;
}
