// A PDF whose end is damaged, read without it: its objects can still be found one after the other.

const ENDINGS = ['trailer', 'startxref'] as const;

/**
 * The same file with the words that announce its trailers blanked out, so that what follows them is passed over.
 * `undefined` for a file that is encrypted or that has no such words: without its trailer it would read no better.
 *
 * @source ISO 32000-1, 7.5.5: the trailer names the catalog, which can also be told by its type.
 */
export function withoutTrailers(bytes: Uint8Array): Uint8Array | undefined {
  if (placesOf(bytes, '/Encrypt').length > 0) return undefined;
  const places = ENDINGS.flatMap((word) =>
    placesOf(bytes, word).map((at) => [at, at + word.length] as const),
  );
  if (places.length === 0) return undefined;
  const blanked = bytes.slice();
  for (const [from, to] of places) blanked.fill(0x20, from, to);
  return blanked;
}

function placesOf(bytes: Uint8Array, word: string): readonly number[] {
  const codes = Array.from(word, (character) => character.charCodeAt(0));
  const first = codes[0] ?? 0;
  const places: number[] = [];
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (codes.every((code, i) => bytes[at + i] === code)) places.push(at);
  }
  return places;
}
