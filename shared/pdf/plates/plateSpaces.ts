// The colour spaces of a page as one plate sees them: the same numbers go in, the grey of the plate comes out.
import { PDFArray, type PDFContext, PDFName, type PDFObject } from 'pdf-lib';
import { asArray, asName, asNumber, asStream, follow, under } from '../art/peek.ts';
import { type Parts, PLATE_CALCULATIONS, PLATES, type Plate } from './plate.ts';
import { calculation, plateFunction } from './plateFunctions.ts';

/** What colours are made of: greys, lights, the four inks, or special inks. */
export type ColourKind = 'grey' | 'rgb' | 'cmyk' | 'spot';

/** A colour space as a plate sees it. */
export interface PlateSpace {
  readonly space: PDFObject;
  /** The colour that it begins with, where that is not what the space of the plate begins with. */
  readonly begins: readonly number[] | undefined;
}

const KINDS: Readonly<Record<Parts, ColourKind>> = { 1: 'grey', 3: 'rgb', 4: 'cmyk' };

/** Spaces by their names, those of inline pictures too. */
const DEVICE: Readonly<Record<string, Parts>> = {
  DeviceGray: 1,
  G: 1,
  CalGray: 1,
  DeviceRGB: 3,
  RGB: 3,
  CalRGB: 3,
  DeviceCMYK: 4,
  CMYK: 4,
};

/** Makes the spaces of one plate, and remembers what kinds of colours it met. */
export interface PlateSpaces {
  /** The space of colours with so many parts. */
  device(parts: Parts): PDFObject;
  /** The parts of a space that is called by its name alone. */
  partsOf(name: string | undefined): Parts | undefined;
  /** A space as the plate sees it; `undefined` for one that this cannot tell the inks of. */
  of(space: PDFObject | undefined): PlateSpace | undefined;
  /** Told of colours that are set without naming their space. */
  meet(parts: Parts): void;
  readonly kinds: ReadonlySet<ColourKind>;
}

/** @source ISO 32000-1, 8.6: colour spaces, and the colours that they begin with. */
export function createPlateSpaces(context: PDFContext, plate: Plate): PlateSpaces {
  const devices = new Map<Parts, PDFObject>();
  const kinds = new Set<ColourKind>();

  const device = (parts: Parts): PDFObject => {
    const known = devices.get(parts);
    if (known !== undefined) return known;
    const names = Array.from({ length: parts }, (_, part) => `Part${part + 1}`);
    const code = PLATE_CALCULATIONS[plate][parts];
    const made = context.register(
      context.obj(['DeviceN', names, 'DeviceGray', calculation(context, parts, code)]),
    );
    devices.set(parts, made);
    return made;
  };

  const meet = (parts: Parts) => {
    kinds.add(KINDS[parts]);
  };

  const partsOf = (name: string | undefined) => (name === undefined ? undefined : DEVICE[name]);

  /** How many parts the colours of a space have that inks are turned into. */
  const partsOfSpace = (space: PDFObject | undefined): Parts | undefined => {
    const array = asArray(context, space)?.asArray();
    const name = asName(context, array?.[0] ?? space);
    if (name !== 'ICCBased') return partsOf(name);
    const dict = asStream(context, array?.[1])?.dict;
    const parts = dict === undefined ? undefined : asNumber(context, under(dict, 'N'));
    return parts === 1 || parts === 3 || parts === 4 ? parts : undefined;
  };

  const replace = (array: PDFArray, place: number, by: PDFObject): PDFObject => {
    const copy = PDFArray.withContext(context);
    array.asArray().forEach((entry, i) => {
      copy.push(i === place ? by : entry);
    });
    return copy;
  };

  const special = (array: PDFArray): PlateSpace | undefined => {
    const [, names, alternate, tint] = array.asArray();
    const name = asName(context, names);
    if (name === 'None') return { space: array, begins: undefined };
    kinds.add('spot');
    const process = PLATES.find((one) => one === name?.toLowerCase());
    const parts = partsOfSpace(alternate);
    const made =
      name === 'All' || process !== undefined
        ? calculation(context, 1, name === 'All' || process === plate ? '1 exch sub' : 'pop 1')
        : parts === undefined
          ? undefined
          : plateFunction(context, tint, plate, parts);
    if (made === undefined || names === undefined) return undefined;
    const head = array.get(0);
    return { space: context.obj([head, names, PDFName.of('DeviceGray'), made]), begins: undefined };
  };

  const of = (space: PDFObject | undefined): PlateSpace | undefined => {
    const parts = partsOfSpace(space);
    if (parts !== undefined) {
      meet(parts);
      // Inks begin with black, whether they are told by a profile or not.
      return { space: device(parts), begins: parts === 4 ? [0, 0, 0, 1] : Array<number>(parts).fill(0) };
    }
    const array = asArray(context, space);
    const kind = asName(context, array?.get(0) ?? space);
    if (array === undefined) {
      const itself = follow(context, space);
      return kind === 'Pattern' && itself !== undefined ? { space: itself, begins: undefined } : undefined;
    }
    if (kind === 'Separation' || kind === 'DeviceN') return special(array);
    if (kind === 'Indexed' || kind === 'I' || kind === 'Pattern') {
      if (array.size() < 2) return { space: array, begins: undefined };
      const base = of(array.get(1));
      return base && { space: replace(array, 1, base.space), begins: kind === 'Pattern' ? undefined : [0] };
    }
    return undefined;
  };

  return { device, partsOf, of, meet, kinds };
}
