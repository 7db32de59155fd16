// A PDF whose end is damaged, read without it: its objects can still be found one after the other.

/** The words that announce what stands behind the objects of a file. */
const ENDINGS = ['trailer', 'startxref'] as const;

/**
 * The same file with the words blanked out that announce its last trailer, so that it is passed over. Only behind the
 * last object are they looked for: in a drawing the same words may be text. `undefined` for a file that is encrypted
 * or has no such end: without a trailer it would read no better.
 *
 * @source ISO 32000-1, 7.5.5: the trailer names the catalog, which can also be told by its type.
 */
export function withoutTrailers(bytes: Uint8Array): Uint8Array | undefined {
  const end = lastOf(bytes, 'endobj');
  if (end === undefined || lastOf(bytes, '/Encrypt') !== undefined) return undefined;
  const blanked = bytes.slice();
  let found = false;
  for (const word of ENDINGS) {
    for (let at = lastOf(blanked, word); at !== undefined && at > end; at = lastOf(blanked, word)) {
      blanked.fill(0x20, at, at + word.length);
      found = true;
    }
  }
  return found ? blanked : undefined;
}

/** Where a word stands for the last time. */
function lastOf(bytes: Uint8Array, word: string): number | undefined {
  const codes = Array.from(word, (character) => character.charCodeAt(0));
  const first = codes[0] ?? 0;
  for (let at = bytes.lastIndexOf(first); at >= 0; at = at === 0 ? -1 : bytes.lastIndexOf(first, at - 1)) {
    if (codes.every((code, i) => bytes[at + i] === code)) return at;
  }
  return undefined;
}
