// The part of a file that is asked for: pdf.js reads large art piece by piece.

/** The bytes `from` to `to`, both counted from 0 and included. */
export interface ByteRange {
  readonly from: number;
  readonly to: number;
}

/**
 * Reads a Range header for a file of so many bytes: one range, `undefined` where the whole file is to be sent, and
 * `unsatisfiable` where nothing of the file is meant. Several ranges at once are answered with the whole.
 *
 * @source RFC 9110, 14.1.2 and 14.2.
 */
export function readRange(header: string | null, size: number): ByteRange | 'unsatisfiable' | undefined {
  const read = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '');
  const [, first = '', last = ''] = read ?? [];
  if (first === '' && last === '') return undefined;
  if (first === '') {
    const length = Math.min(Number(last), size);
    return length === 0 ? 'unsatisfiable' : { from: size - length, to: size - 1 };
  }
  const from = Number(first);
  const to = last === '' ? size - 1 : Math.min(Number(last), size - 1);
  if (last !== '' && Number(last) < from) return undefined;
  return from >= size ? 'unsatisfiable' : { from, to };
}
