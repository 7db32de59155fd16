// Reading a library of printers and papers from JSON: every field checked, every complaint naming its field.
import { ok, type Result, refuse } from '../fault/result.ts';
import { complain, fieldFault } from '../job/fieldFaults.ts';
import { type FieldFault, LengthReader } from '../job/lengthReader.ts';
import { bringUpToDate, type Versions } from '../job/upToDate.ts';
import { type Caliper, readCaliper } from './caliper.ts';
import { faultsTogether } from './faultsTogether.ts';
import { learnFromReadings } from './learnFromReadings.ts';
import {
  type Feed,
  LIBRARY_SCHEMA,
  type Library,
  type Paper,
  type Printer,
  type StockForm,
} from './library.ts';
import {
  type WrittenFeed,
  type WrittenForm,
  type WrittenLibrary,
  type WrittenPaper,
  type WrittenPrinter,
  writtenLibrary,
} from './librarySchema.ts';
import { readPaperWeight } from './paperWeight.ts';

const VERSIONS: Versions = {
  called: 'library',
  present: LIBRARY_SCHEMA,
  steps: [],
  invalid: 'library-invalid',
  tooNew: 'library-too-new',
  remedy: 'Choose a library of printers and papers that was exported by this program.',
};

/**
 * Reads a library from parsed JSON; lengths, weights and calipers stay as they were typed. Older versions are brought up
 * to date, later ones refused (`library-too-new`). A refusal (`library-invalid`) names each field that is wrong.
 */
export function readLibrary(json: unknown): Result<Library> {
  const current = bringUpToDate(json, VERSIONS);
  if (!current.ok) return current;
  const read = readLibraryFields(current.value);
  return read.ok ? read : refuse(complain('library-invalid', 'library', read.fault));
}

/** Reads a library of the present version; a refusal holds every complaint with its field, for a form that shows them. */
export function readLibraryFields(json: unknown): Result<Library, readonly FieldFault[]> {
  const shape = writtenLibrary.safeParse(json);
  if (!shape.success) return refuse(shape.error.issues.map(fieldFault));
  const reader = new LengthReader(shape.data.units);
  const library = build(shape.data, reader);
  // What could not be read stands as nothing, which would only draw complaints that are none.
  const faults = reader.faults.length > 0 ? reader.faults : faultsTogether(library);
  return faults.length > 0 ? refuse(faults) : ok(library);
}

/** The library as the text of its file, two spaces deep, ending in a newline. What was typed stays as it was typed. */
export function writeLibrary(library: Library): string {
  const asTyped = (_key: string, value: unknown) =>
    typeof value === 'object' && value !== null && 'typed' in value ? value.typed : value;
  return `${JSON.stringify(library, asTyped, 2)}\n`;
}

function build(written: WrittenLibrary, reader: LengthReader): Library {
  const { cutting } = written.rates;
  const cutter = (of: 'tallestPile' | 'widest' | 'deepest' | 'opening' | 'leastGauge') =>
    reader.length(cutting[of], `rates.cutting.${of}`, 'size');
  return {
    ...written,
    rates: {
      ...written.rates,
      cutting: {
        ...cutting,
        tallestPile: cutter('tallestPile'),
        widest: cutter('widest'),
        deepest: cutter('deepest'),
        opening: cutter('opening'),
        leastGauge: cutter('leastGauge'),
      },
    },
    printers: written.printers.map((printer, i) => buildPrinter(printer, `printers[${i}]`, reader)),
    papers: written.papers.map((paper, i) => buildPaper(paper, `papers[${i}]`, reader)),
  };
}

function buildPrinter(written: WrittenPrinter, field: string, reader: LengthReader): Printer {
  const [first, ...others] = written.feeds;
  const feed = (one: WrittenFeed, i: number) => buildFeed(one, `${field}.feeds[${i}]`, reader);
  return {
    ...written,
    feeds: [feed(first, 0), ...others.map((one, i) => feed(one, i + 1))],
    ink: learnFromReadings(written.ink).ink,
  };
}

function buildFeed(written: WrittenFeed, field: string, reader: LengthReader): Feed {
  const { thickest, unprintable, ...rest } = written;
  const margin = (edge: keyof typeof unprintable) =>
    reader.length(unprintable[edge], `${field}.unprintable.${edge}`, 'margin');
  return {
    ...rest,
    least: reader.size(written.least, `${field}.least`),
    most: reader.size(written.most, `${field}.most`),
    ...(thickest === undefined ? {} : { thickest: caliperOf(thickest, `${field}.thickest`, reader) }),
    unprintable: {
      lead: margin('lead'),
      tail: margin('tail'),
      left: margin('left'),
      right: margin('right'),
    },
  };
}

function buildPaper(written: WrittenPaper, field: string, reader: LengthReader): Paper {
  const [first, ...others] = written.forms;
  const form = (one: WrittenForm, i: number) => buildForm(one, `${field}.forms[${i}]`, reader);
  const weight = readPaperWeight(written.weight);
  if (!weight.ok) reader.complain(`${field}.weight`, weight.fault);
  return {
    ...written,
    weight: weight.ok ? weight.value : { grammage: 0, typed: written.weight },
    caliper: caliperOf(written.caliper, `${field}.caliper`, reader),
    sidesAlike: written.sidesAlike ?? written.coated !== 'one-side',
    forms: [form(first, 0), ...others.map((one, i) => form(one, i + 1))],
  };
}

function buildForm(written: WrittenForm, field: string, reader: LengthReader): StockForm {
  switch (written.is) {
    case 'sheet':
      return { ...written, size: reader.size(written.size, `${field}.size`) };
    case 'parent':
      return {
        ...written,
        size: reader.size(written.size, `${field}.size`),
        cutTo: written.cutTo.map((to, i) => reader.size(to, `${field}.cutTo[${i}]`)),
      };
    case 'roll':
      return {
        ...written,
        width: reader.length(written.width, `${field}.width`, 'size'),
        cutTo: written.cutTo.map((to, i) => reader.length(to, `${field}.cutTo[${i}]`, 'size')),
      };
  }
}

function caliperOf(written: string, field: string, reader: LengthReader): Caliper {
  const read = readCaliper(written);
  if (read.ok) return read.value;
  reader.complain(field, read.fault);
  return { micrometres: 0, typed: written };
}
