// Reading what people type for lengths and sizes: `0.25 in`, `1/8in`, `1 1/8"`, `3 mm`, `5x7in`.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import type { Length, Unit } from './length.ts';

const SPELLINGS: Readonly<Record<string, Unit>> = {
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  pt: 'pt',
  point: 'pt',
  points: 'pt',
};

const LENGTH = /^(?<sign>[-−]?)\s*(?<number>\d[\d\s./,-]*|[.,]\d+)\s*(?<unit>[a-z"″]*)$/i;
const DECIMAL = /^(\d+([.,]\d+)?|[.,]\d+)$/;
const FRACTION = /^((?<whole>\d+)(\s+|-))?(?<over>\d+)\s*\/\s*(?<under>\d+)$/;

/**
 * Reads one length. Without a unit it takes `fallback`, or is refused where there is none.
 * Fractions are read as people write them (`1/8`, `1 1/8`, `1-1/8`); a decimal comma counts as a point, but
 * `1,000`, which may mean one or a thousand, is refused.
 */
export function readLength(text: string, fallback?: Unit): Result<Length> {
  const typed = text.trim();
  const parts = LENGTH.exec(typed)?.groups;
  if (parts === undefined) return refuse(unreadable(text));
  const spelled = (parts.unit ?? '').toLowerCase();
  const unit = spelled === '' ? fallback : Object.hasOwn(SPELLINGS, spelled) ? SPELLINGS[spelled] : undefined;
  if (unit === undefined) return refuse(spelled === '' ? unitMissing(text) : unitUnknown(text, spelled));
  const size = readNumber((parts.number ?? '').trim());
  if (size === undefined) return refuse(unreadable(text));
  const amount = parts.sign === '' ? size : -size;
  return ok({ amount, unit, typed: spelled === '' ? `${typed} ${unit}` : typed });
}

/** Reads a width and a height: `5x7in`, `5 × 7 in`, `127 mm x 178 mm`. A unit on one of them serves both. */
export function readSize(text: string, fallback?: Unit): Result<readonly [Length, Length]> {
  const [first, second, ...rest] = text.split(/[x×]/i);
  if (first === undefined || second === undefined || rest.length > 0) return refuse(sizeUnreadable(text));
  const height = readLength(second, fallback);
  if (!height.ok) return height;
  const width = readLength(first, height.value.unit);
  if (!width.ok) return width;
  return ok([width.value, height.value]);
}

function readNumber(text: string): number | undefined {
  const fraction = FRACTION.exec(text)?.groups;
  if (fraction !== undefined) {
    const under = Number(fraction.under);
    return under === 0 ? undefined : Number(fraction.whole ?? 0) + Number(fraction.over) / under;
  }
  if (!DECIMAL.test(text) || /,\d{3}$/.test(text)) return undefined;
  return Number(text.replace(',', '.'));
}

const EXAMPLES = 'Write it like 0.25 in, 1/8 in, 3 mm or 9 pt.';

function unreadable(text: string): Fault {
  return { code: 'length-unreadable', message: `"${text}" is not a length.`, remedy: EXAMPLES };
}

function unitMissing(text: string): Fault {
  return {
    code: 'length-unreadable',
    message: `"${text}" does not say inches, millimetres or points.`,
    remedy: EXAMPLES,
  };
}

function unitUnknown(text: string, spelled: string): Fault {
  return {
    code: 'length-unreadable',
    message: `"${text}" is in "${spelled}", which is not a unit this program reads.`,
    remedy: EXAMPLES,
  };
}

function sizeUnreadable(text: string): Fault {
  return {
    code: 'length-unreadable',
    message: `"${text}" is not a width and a height.`,
    remedy: 'Write it like 5 x 7 in or 148 x 105 mm.',
  };
}
