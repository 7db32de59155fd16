// A drawing with every colour named through a space that the plate has its own answer to.
import { mergeIntoTypedArray } from 'pdf-lib';
import { afterDelimited, afterPicture, at, characterClass } from '../form/scan.ts';
import type { Parts } from './plate.ts';

/** What the resources call the spaces of a plate. */
export const PLATE_NAMES: Readonly<Record<Parts, string>> = {
  1: 'PlateGrey',
  3: 'PlateLights',
  4: 'PlateInks',
};

/** What a drawing begins with: black, for filling and for stroking. */
export const BLACK = `/${PLATE_NAMES[1]} cs 0 scn /${PLATE_NAMES[1]} CS 0 SCN\n`;

/** What a drawing needs to know of the spaces that it names. */
export interface Naming {
  /** The parts of a space that needs no resource, such as `DeviceCMYK`. */
  partsOf(name: string): Parts | undefined;
  /** The colour that a space of the resources begins with, where it has to be said. */
  begins(name: string): readonly number[] | undefined;
  /** Told of colours with so many parts that are met. */
  meet(parts: Parts): void;
}

/** Operators that name their space and set a colour in one. */
const AT_ONCE: Readonly<Record<string, { readonly parts: Parts; readonly stroke: boolean }>> = {
  g: { parts: 1, stroke: false },
  G: { parts: 1, stroke: true },
  rg: { parts: 3, stroke: false },
  RG: { parts: 3, stroke: true },
  k: { parts: 4, stroke: false },
  K: { parts: 4, stroke: true },
};

interface Word {
  readonly from: number;
  readonly to: number;
}

/**
 * Rewrites the colour operators of a drawing. Says whether some inline picture names its colours in a way that could not
 * be rewritten.
 *
 * @source ISO 32000-1, Table 74 (colour operators), 8.9.7 (inline images).
 */
export function recolour(
  drawing: Uint8Array,
  naming: Naming,
): { readonly drawing: Uint8Array; readonly whole: boolean } {
  const out: (Uint8Array | string)[] = [];
  let copied = 0;
  let whole = true;
  let words: Word[] = [];
  const textOf = ({ from, to }: Word) =>
    String.fromCharCode(...drawing.subarray(from, Math.min(to, from + 200)));
  const replace = (from: number, to: number, by: string) => {
    out.push(drawing.subarray(copied, from), by);
    copied = to;
  };

  const setAtOnce = (operator: Word, { parts, stroke }: { parts: Parts; stroke: boolean }) => {
    const first = words.at(-parts);
    if (first === undefined) return;
    const numbers = words.slice(-parts).map(textOf).join(' ');
    naming.meet(parts);
    const [space, colour] = stroke ? ['CS', 'SCN'] : ['cs', 'scn'];
    replace(first.from, operator.to, `/${PLATE_NAMES[parts]} ${space} ${numbers} ${colour}`);
  };

  const nameSpace = (operator: Word, stroke: boolean) => {
    const word = words.at(-1);
    if (word === undefined) return;
    const name = textOf(word).slice(1);
    const parts = naming.partsOf(name);
    const begins = parts === 4 ? [0, 0, 0, 1] : parts ? Array<number>(parts).fill(0) : naming.begins(name);
    if (parts !== undefined) naming.meet(parts);
    const called = parts === undefined ? name : PLATE_NAMES[parts];
    const colour = begins === undefined ? '' : ` ${begins.join(' ')} ${stroke ? 'SCN' : 'scn'}`;
    replace(word.from, operator.to, `/${called} ${stroke ? 'CS' : 'cs'}${colour}`);
  };

  /** The entries of an inline picture come in pairs of a key and a value. */
  const nameOfPicture = () => {
    const key = words.findIndex((word) => ['/CS', '/ColorSpace'].includes(textOf(word)));
    const value = words[key + 1];
    if (key < 0 || value === undefined) return;
    const parts = naming.partsOf(textOf(value).slice(1));
    if (parts !== undefined) {
      naming.meet(parts);
      replace(value.from, value.to, `/${PLATE_NAMES[parts]}`);
    }
    if (at(drawing, value.from) === 0x5b) whole = false;
  };

  for (let i = 0; i < drawing.length; ) {
    const from = i;
    const kind = characterClass(at(drawing, i));
    if (kind === 1) {
      i += 1;
      continue;
    }
    const byte = at(drawing, i);
    if (kind === 2) {
      i = afterDelimited(drawing, i);
      if (byte !== 0x25) words.push({ from, to: i });
      continue;
    }
    while (i < drawing.length && characterClass(at(drawing, i)) === 0) i += 1;
    const word = { from, to: i };
    if (isNumber(byte)) {
      words.push(word);
      continue;
    }
    const operator = textOf(word);
    const atOnce = AT_ONCE[operator];
    if (atOnce !== undefined) setAtOnce(word, atOnce);
    else if (operator === 'cs' || operator === 'CS') nameSpace(word, operator === 'CS');
    else if (operator === 'ID') {
      nameOfPicture();
      i = afterPicture(drawing, i);
    } else if (operator === 'true' || operator === 'false' || operator === 'null') {
      words.push(word);
      continue;
    }
    words = [];
  }
  out.push(drawing.subarray(copied));
  return { drawing: mergeIntoTypedArray(...out), whole };
}

/** Digits, signs and the point. */
function isNumber(byte: number): boolean {
  return (byte >= 0x30 && byte <= 0x39) || byte === 0x2b || byte === 0x2d || byte === 0x2e;
}
