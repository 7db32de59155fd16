// Unpacking a stranger's stream, no further than a limit.
import { decodePDFRawStream, type PDFRawStream } from 'pdf-lib';
import { asDict, asNumber, entriesOf, follow, under } from '../art/peek.ts';

/**
 * How many bytes are unpacked before the limit is looked at again: few at first, since the library makes room for all
 * that it is asked for and most streams are short, then twice as many each time, up to the most.
 */
const FIRST_CHUNK_BYTES = 1 << 12;
const MAX_CHUNK_BYTES = 1 << 20;

/**
 * The bytes of a stream without its filters, or why there are none: more than `limit` of them, or filters that are
 * damaged or not for drawings.
 */
export function unpack(stream: PDFRawStream, limit: number): Uint8Array | 'too-large' | 'unreadable' {
  const { dict, contents } = stream;
  if (follow(dict.context, under(dict, 'Filter')) === undefined) {
    return contents.length > limit ? 'too-large' : contents;
  }
  if (hasPredictor(stream)) return 'unreadable';
  try {
    const decoder = decodePDFRawStream(stream);
    let step = FIRST_CHUNK_BYTES;
    for (let read = 0; read <= limit; read += step) {
      if (read > 0) step = Math.min(2 * step, MAX_CHUNK_BYTES);
      if (decoder.getBytes(step).length === step) continue;
      decoder.reset();
      const bytes = decoder.getBytes(0);
      return bytes.length > limit
        ? 'too-large'
        : new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length);
    }
    return 'too-large';
  } catch {
    return 'unreadable';
  }
}

/** The library does not undo predictors: what it would give is not the drawing. */
function hasPredictor({ dict }: PDFRawStream): boolean {
  const { context } = dict;
  const given = under(dict, 'DecodeParms');
  return [given, ...entriesOf(context, given)].some((entry) => {
    const parms = asDict(context, entry);
    return parms !== undefined && (asNumber(context, under(parms, 'Predictor')) ?? 1) > 1;
  });
}
