// Looking at a stranger's objects without trusting what kind they are.
import {
  PDFArray,
  type PDFContext,
  PDFDict,
  PDFName,
  PDFNull,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFRef,
} from 'pdf-lib';

type Value = PDFObject | undefined;

/** References that lead to references are followed this far; the standard knows of none. */
const MAX_REFERENCE_HOPS = 16;

/** What a value stands for: references followed, `null` and missing objects as `undefined`. */
export function follow(context: PDFContext, value: Value): Value {
  let found = value;
  for (let hop = 0; found instanceof PDFRef; hop += 1) {
    if (hop === MAX_REFERENCE_HOPS) return undefined;
    found = context.lookup(found);
  }
  return found === PDFNull ? undefined : found;
}

export function asDict(context: PDFContext, value: Value): PDFDict | undefined {
  const found = follow(context, value);
  return found instanceof PDFDict ? found : undefined;
}

export function asArray(context: PDFContext, value: Value): PDFArray | undefined {
  const found = follow(context, value);
  return found instanceof PDFArray ? found : undefined;
}

export function asStream(context: PDFContext, value: Value): PDFRawStream | undefined {
  const found = follow(context, value);
  return found instanceof PDFRawStream ? found : undefined;
}

export function asNumber(context: PDFContext, value: Value): number | undefined {
  const found = follow(context, value);
  return found instanceof PDFNumber && Number.isFinite(found.asNumber()) ? found.asNumber() : undefined;
}

/** The text of a name, without its slash. */
export function asName(context: PDFContext, value: Value): string | undefined {
  const found = follow(context, value);
  return found instanceof PDFName ? found.decodeText() : undefined;
}

/** The entries of an array, references not yet followed; none where there is no array. */
export function entriesOf(context: PDFContext, value: Value): readonly PDFObject[] {
  return asArray(context, value)?.asArray() ?? [];
}

/** The raw value of a dictionary under a key. */
export function under(dict: PDFDict, key: string): Value {
  return dict.get(PDFName.of(key));
}

/** Four finite numbers in a row, or the six of a matrix. */
export function asNumbers(context: PDFContext, value: Value, count: number): readonly number[] | undefined {
  const numbers = entriesOf(context, value).map((entry) => asNumber(context, entry));
  const finite = numbers.filter((number) => number !== undefined);
  return numbers.length === count && finite.length === count ? finite : undefined;
}
