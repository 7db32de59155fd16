// One plate of a page: the page with every colour replaced by the grey that shows how much ink of this plate it takes.
import {
  mergeIntoTypedArray,
  type PDFDict,
  PDFDocument,
  PDFName,
  type PDFObject,
  PDFRawStream,
  PDFRef,
} from 'pdf-lib';
import { ART_LIMITS } from '../art/limits.ts';
import { asDict, asName, asNumber, asStream, entriesOf, follow, under } from '../art/peek.ts';
import { unpack } from '../form/unpack.ts';
import type { Plate } from './plate.ts';
import { type ColourKind, createPlateSpaces } from './plateSpaces.ts';
import { BLACK, PLATE_NAMES, recolour } from './recolour.ts';

/** A page that shows one plate, and what was met on the way. */
export interface MadePlate {
  readonly bytes: Uint8Array;
  readonly kinds: ReadonlySet<ColourKind>;
  /** Whether every colour of the page could be told in inks. */
  readonly whole: boolean;
}

/**
 * Makes one plate of the first page of a PDF of our own. Colours of light are turned into inks by full grey replacement,
 * profiles are not looked into, and special inks are taken for the inks that they say they may be replaced by.
 * Overprinting is not followed: what lies on top knocks out what lies below.
 */
export async function makePlate(page: Uint8Array, plate: Plate): Promise<MadePlate> {
  const document = await PDFDocument.load(page, { updateMetadata: false });
  const { context } = document;
  const spaces = createPlateSpaces(context, plate);
  const seen = new Set<PDFObject>();
  let whole = true;
  const first = (value: PDFObject | undefined) => {
    const found = follow(context, value);
    if (found === undefined || seen.has(found)) return false;
    seen.add(found);
    return true;
  };

  /** Puts the space of the plate in the place of the one that a dictionary names. */
  const replaceSpace = (dict: PDFDict, key: string) => {
    const space = spaces.of(under(dict, key));
    if (space === undefined) whole = false;
    else dict.set(PDFName.of(key), space.space);
    return space;
  };

  const shade = (value: PDFObject | undefined) => {
    const dict = asStream(context, value)?.dict ?? asDict(context, value);
    if (dict !== undefined && first(value)) replaceSpace(dict, 'ColorSpace');
  };

  const picture = (dict: PDFDict) => {
    const stencil = follow(context, under(dict, 'ImageMask'));
    if (stencil?.toString() !== 'true') replaceSpace(dict, 'ColorSpace');
  };

  const colourResources = (resources: PDFDict): ((name: string) => readonly number[] | undefined) => {
    const begins = new Map<string, readonly number[] | undefined>();
    const named = asDict(context, under(resources, 'ColorSpace')) ?? context.obj({});
    for (const key of named.keys()) {
      const name = key.decodeText();
      begins.set(name, replaceSpace(named, name)?.begins);
    }
    for (const parts of [1, 3, 4] as const) {
      named.set(PDFName.of(PLATE_NAMES[parts]), spaces.device(parts));
    }
    resources.set(PDFName.of('ColorSpace'), named);
    return (name) => begins.get(name);
  };

  const known = new Map<PDFDict, (name: string) => readonly number[] | undefined>();
  const colourAll = (resources: PDFDict) => {
    const found = known.get(resources);
    if (found !== undefined) return found;
    const begins = colourResources(resources);
    known.set(resources, begins);
    const each = (kind: string, visit: (value: PDFObject) => void) => {
      for (const value of asDict(context, under(resources, kind))?.values() ?? []) visit(value);
    };
    each('XObject', (value) => {
      const dict = asStream(context, value)?.dict;
      if (dict === undefined || !first(value)) return;
      if (asName(context, under(dict, 'Subtype')) === 'Image') picture(dict);
      else draw(value, resources, '');
    });
    each('Pattern', (value) => {
      const dict = asStream(context, value)?.dict ?? asDict(context, value);
      if (dict === undefined || !first(value)) return;
      if (asNumber(context, under(dict, 'PatternType')) === 2) shade(under(dict, 'Shading'));
      else draw(value, resources, BLACK);
    });
    each('Shading', shade);
    each('Font', (value) => {
      const font = asDict(context, value);
      if (font === undefined || asName(context, under(font, 'Subtype')) !== 'Type3' || !first(value)) return;
      const own = asDict(context, under(font, 'Resources')) ?? resources;
      for (const glyph of asDict(context, under(font, 'CharProcs'))?.values() ?? []) {
        if (first(glyph)) draw(glyph, own, '');
      }
    });
    return begins;
  };

  const draw = (value: PDFObject, above: PDFDict, before: string) => {
    const stream = asStream(context, value);
    if (stream === undefined || !(value instanceof PDFRef)) return;
    const resources = asDict(context, under(stream.dict, 'Resources')) ?? above;
    const begins = colourAll(resources);
    const drawing = unpack(stream, ART_LIMITS.unpacked);
    if (typeof drawing === 'string') {
      whole = false;
      return;
    }
    const recoloured = recolour(drawing, { ...spaces, begins });
    whole &&= recoloured.whole;
    const all = mergeIntoTypedArray(before, recoloured.drawing);
    const dict = stream.dict;
    for (const key of ['Filter', 'DecodeParms', 'Length']) dict.delete(PDFName.of(key));
    const group = asDict(context, under(dict, 'Group'));
    if (group?.has(PDFName.of('CS')) === true) group.set(PDFName.of('CS'), PDFName.of('DeviceGray'));
    context.assign(value, PDFRawStream.of(dict, all));
  };

  const { node } = document.getPage(0);
  const resources = asDict(context, under(node, 'Resources')) ?? context.obj({});
  node.set(PDFName.of('Resources'), resources);
  const contents = under(node, 'Contents');
  for (const part of contents instanceof PDFRef ? [contents] : entriesOf(context, contents)) {
    draw(part, resources, BLACK);
  }
  return { bytes: await document.save({ useObjectStreams: false }), kinds: spaces.kinds, whole };
}
