// Reading a drawing character by character: where its words, strings and inline pictures end.

const WHITE = ' \t\n\f\r\0';
const DELIMITERS = '()<>[]{}/%';

/** For each byte: 0 for a regular character, 1 for white space, 2 for a delimiter. */
const KIND = Uint8Array.from({ length: 256 }, (_, byte) => {
  const character = String.fromCharCode(byte);
  if (WHITE.includes(character)) return 1;
  return DELIMITERS.includes(character) ? 2 : 0;
});

/** Bytes that a skipped inline picture must be followed by to have really ended. */
const LOOK_AHEAD_BYTES = 12;

/** Where what begins with this delimiter ends: a comment, a string, a name, or the delimiter alone. */
export function afterDelimited(drawing: Uint8Array, start: number): number {
  switch (String.fromCharCode(at(drawing, start))) {
    case '%':
      return afterComment(drawing, start);
    case '(':
      return afterString(drawing, start);
    case '<':
      return at(drawing, start + 1) === 0x3c ? start + 2 : afterByte(drawing, start, 0x3e);
    case '/': {
      let end = start + 1;
      while (end < drawing.length && characterClass(at(drawing, end)) === 0) end += 1;
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
export function afterPicture(drawing: Uint8Array, start: number): number {
  for (let i = start + 1; i < drawing.length - 1; i += 1) {
    const isEnd =
      at(drawing, i) === 0x45 &&
      at(drawing, i + 1) === 0x49 &&
      characterClass(at(drawing, i - 1)) === 1 &&
      (i + 2 === drawing.length || characterClass(at(drawing, i + 2)) === 1);
    if (isEnd && drawing.subarray(i + 2, i + 2 + LOOK_AHEAD_BYTES).every(isText)) return i + 2;
  }
  return drawing.length;
}

function isText(byte: number): boolean {
  return (byte >= 0x20 && byte < 0x7f) || characterClass(byte) === 1;
}

/** The byte here, 0 past the end. */
export function at(bytes: Uint8Array, i: number): number {
  return bytes[i] ?? 0;
}

/** 0 for a regular character, 1 for white space, 2 for a delimiter. */
export function characterClass(byte: number): number {
  return KIND[byte] ?? 0;
}
