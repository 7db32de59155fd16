// The functions that turn the amount of a special ink into a colour, followed by what one plate shows of that colour.
import type { PDFContext, PDFDict, PDFObject, PDFRawStream, PDFRef } from 'pdf-lib';
import { asDict, asNumber, asNumbers, asStream, entriesOf, under } from '../art/peek.ts';
import { unpack } from '../form/unpack.ts';
import { type Parts, PLATE_CALCULATIONS, type Plate, plateGrey } from './plate.ts';

/** The largest function that is read, in bytes. */
const MAX_FUNCTION_BYTES = 16 * 1024 * 1024;

/** A calculation from so many numbers, each 0 to 1, to a grey. */
export function calculation(context: PDFContext, inputs: number, code: string): PDFRef {
  return calculate(context, context.obj(Array(inputs).fill([0, 1]).flat()), code);
}

function calculate(context: PDFContext, domain: PDFObject, code: string): PDFRef {
  const entries = { FunctionType: 4, Domain: domain, Range: [0, 1] };
  return context.register(context.flateStream(`{ ${code} }`, entries));
}

/**
 * The function, then what the plate shows of the colour that it gives; `undefined` for one that cannot be read.
 *
 * @source ISO 32000-1, 7.10: sampled (0), exponential (2), stitching (3) and PostScript (4) functions.
 */
export function plateFunction(
  context: PDFContext,
  given: PDFObject | undefined,
  plate: Plate,
  parts: Parts,
): PDFRef | undefined {
  const stream = asStream(context, given);
  const dict = stream?.dict ?? asDict(context, given);
  if (dict === undefined) return undefined;
  switch (asNumber(context, under(dict, 'FunctionType'))) {
    case 0:
      return stream && sampled(context, stream, plate, parts);
    case 2:
      return exponential(context, dict, plate, parts);
    case 3:
      return stitched(context, dict, plate, parts);
    case 4:
      return stream && calculated(context, stream, plate, parts);
    default:
      return undefined;
  }
}

function calculated(
  context: PDFContext,
  stream: PDFRawStream,
  plate: Plate,
  parts: Parts,
): PDFRef | undefined {
  const domain = under(stream.dict, 'Domain');
  const bytes = unpack(stream, MAX_FUNCTION_BYTES);
  if (typeof bytes === 'string' || domain === undefined) return undefined;
  const text = String.fromCharCode(...bytes).trim();
  if (!text.startsWith('{') || !text.endsWith('}')) return undefined;
  return calculate(context, domain, `${text.slice(1, -1)} ${PLATE_CALCULATIONS[plate][parts]}`);
}

function exponential(context: PDFContext, dict: PDFDict, plate: Plate, parts: Parts): PDFRef | undefined {
  const power = asNumber(context, under(dict, 'N'));
  const from = asNumbers(context, under(dict, 'C0'), parts) ?? Array<number>(parts).fill(0);
  const to = asNumbers(context, under(dict, 'C1'), parts) ?? Array<number>(parts).fill(1);
  if (power === undefined) return undefined;
  const each = from.map((start, part) => {
    const span = (to[part] ?? 0) - start;
    return `dup ${power === 1 ? '' : `${decimal(power)} exp `}${decimal(span)} mul ${decimal(start)} add exch`;
  });
  return calculation(context, 1, `${each.join(' ')} pop ${PLATE_CALCULATIONS[plate][parts]}`);
}

const decimal = (value: number) => `${Number(value.toFixed(6))}`;

function stitched(context: PDFContext, dict: PDFDict, plate: Plate, parts: Parts): PDFRef | undefined {
  const pieces = entriesOf(context, under(dict, 'Functions')).map((piece) =>
    plateFunction(context, piece, plate, parts),
  );
  const known = pieces.filter((piece) => piece !== undefined);
  if (known.length < pieces.length) return undefined;
  const kept = Object.fromEntries(
    ['Domain', 'Bounds', 'Encode'].flatMap((key) => {
      const value = under(dict, key);
      return value === undefined ? [] : [[key, value]];
    }),
  );
  return context.register(context.obj({ FunctionType: 3, ...kept, Functions: known }));
}

function sampled(context: PDFContext, stream: PDFRawStream, plate: Plate, parts: Parts): PDFRef | undefined {
  const { dict } = stream;
  const bits = asNumber(context, under(dict, 'BitsPerSample'));
  const range = asNumbers(context, under(dict, 'Range'), 2 * parts);
  const bytes = unpack(stream, MAX_FUNCTION_BYTES);
  if (typeof bytes === 'string' || range === undefined || (bits !== 8 && bits !== 16)) return undefined;
  const decode = asNumbers(context, under(dict, 'Decode'), 2 * parts) ?? range;
  const wide = bits / 8;
  const whole = 2 ** bits - 1;
  const count = Math.floor(bytes.length / (parts * wide));
  const greys = Uint8Array.from({ length: count }, (_, sample) => {
    const colour = Array.from({ length: parts }, (__, part) => {
      const at = (sample * parts + part) * wide;
      const value = wide === 1 ? (bytes[at] ?? 0) : 256 * (bytes[at] ?? 0) + (bytes[at + 1] ?? 0);
      const [low = 0, high = 1] = decode.slice(2 * part);
      return low + (value / whole) * (high - low);
    });
    return Math.round(255 * Math.min(1, Math.max(0, plateGrey(plate, colour))));
  });
  const kept = Object.fromEntries(
    ['Domain', 'Size', 'Encode', 'Order'].flatMap((key) => {
      const value = under(dict, key);
      return value === undefined ? [] : [[key, value]];
    }),
  );
  return context.register(
    context.flateStream(greys, { FunctionType: 0, BitsPerSample: 8, Range: [0, 1], ...kept }),
  );
}
