// Copying what a page uses out of a stranger's PDF: everything it draws with, nothing of the document around it.
import {
  PDFArray,
  type PDFContext,
  PDFDict,
  PDFInvalidObject,
  PDFName,
  PDFNull,
  type PDFObject,
  PDFRawStream,
  PDFRef,
} from 'pdf-lib';
import type { OpenArt } from '../art/openArt.ts';
import { asDict, asName, asNumber, follow, under } from '../art/peek.ts';

/** Why a copy is not whole. */
export type CopyTrouble = 'damaged' | 'too-large';

/** Copies objects from one file into another, each of them once. */
export interface Copier {
  /** Copies a value and all that it refers to. Forms without resources of their own get `resources`. */
  copy(value: PDFObject, resources?: PDFRef): PDFObject;
  /** Copies a dictionary as a value of its own. */
  copyDict(dict: PDFDict): PDFDict;
  /** Copies a resource dictionary, once, which is also what its own forms without resources get. */
  copyResources(value: PDFObject): PDFRef | undefined;
  /** The layers among what was copied, each with its copy. */
  readonly layers: ReadonlyMap<PDFRef, PDFRef>;
  readonly trouble: () => CopyTrouble | undefined;
}

/** A file of art that is being placed, and what copies it. */
export interface PlacedArt {
  readonly art: OpenArt;
  readonly copier: Copier;
}

/** Kinds of object that belong to the document and not to what a page shows; a way into one is cut off. */
const LEFT_BEHIND: ReadonlySet<string | undefined> = new Set([
  'Annot',
  'Catalog',
  'Outlines',
  'Page',
  'Pages',
  'StructElem',
  'StructTreeRoot',
]);

/**
 * Entries that lead back into the document or say nothing to a printer. They mean this only in streams and in
 * dictionaries that say their type: in a resource dictionary the same words may be names of resources.
 */
const DROPPED: ReadonlySet<PDFName> = new Set(
  ['AF', 'Metadata', 'Parent', 'PieceInfo', 'StructParent', 'StructParents'].map((key) => PDFName.of(key)),
);

const LENGTH = PDFName.of('Length');
const RESOURCES = PDFName.of('Resources');

interface Waiting {
  readonly from: PDFObject;
  readonly to: PDFRef;
  readonly resources: PDFRef | undefined;
}

/** A copier from the art into `target`. Streams keep their bytes and filters. */
export function createCopier({ document, limits }: OpenArt, target: PDFContext): Copier {
  const source = document.context;
  const copies = new Map<PDFObject, PDFRef>();
  /** Copies that depend on the resources they were given. */
  const dependents = new Map<PDFRef, Map<PDFObject, PDFRef>>();
  const layers = new Map<PDFRef, PDFRef>();
  const waiting: Waiting[] = [];
  let copied = 0;
  let trouble: CopyTrouble | undefined;

  const copiesFor = (from: PDFObject, resources: PDFRef | undefined) => {
    if (resources === undefined || !borrowsResources(source, from)) return copies;
    const known = dependents.get(resources) ?? new Map<PDFObject, PDFRef>();
    dependents.set(resources, known);
    return known;
  };

  /** The copy of an object, which waits to be filled; `key` is what it is known by. */
  const share = (key: PDFObject, from: PDFObject, resources: PDFRef | undefined): PDFRef => {
    const known = copiesFor(from, resources);
    const found = known.get(key);
    if (found !== undefined) return found;
    const to = target.nextRef();
    known.set(key, to);
    waiting.push({ from, to, resources });
    return to;
  };

  const copyRef = (ref: PDFRef, resources: PDFRef | undefined): PDFObject => {
    const from = follow(source, ref);
    if (from === undefined || isLeftBehind(source, from)) return PDFNull;
    if (!(from instanceof PDFDict || from instanceof PDFArray || from instanceof PDFRawStream)) {
      return copyValue(from, resources, 0);
    }
    const to = share(ref, from, resources);
    if (from instanceof PDFDict && asName(source, under(from, 'Type')) === 'OCG') layers.set(ref, to);
    return to;
  };

  const copyValue = (value: PDFObject, resources: PDFRef | undefined, depth: number): PDFObject => {
    if (depth > limits.nesting) {
      trouble = 'too-large';
      return PDFNull;
    }
    if (value instanceof PDFRef) return copyRef(value, resources);
    if (value instanceof PDFDict) return copyDict(value, resources, depth, false);
    if (value instanceof PDFArray) {
      const array = PDFArray.withContext(target);
      for (const entry of value.asArray()) array.push(copyValue(entry, resources, depth + 1));
      return array;
    }
    if (value instanceof PDFRawStream) return share(value, value, resources);
    if (value instanceof PDFInvalidObject) {
      trouble ??= 'damaged';
      return PDFNull;
    }
    return value;
  };

  const copyDict = (
    dict: PDFDict,
    resources: PDFRef | undefined,
    depth: number,
    ofStream: boolean,
  ): PDFDict => {
    const copy = PDFDict.withContext(target);
    if (isLeftBehind(source, dict)) return copy;
    const typed = ofStream || asName(source, under(dict, 'Type')) !== undefined;
    for (const [key, value] of dict.entries()) {
      if ((typed && DROPPED.has(key)) || (ofStream && key === LENGTH)) continue;
      const entry = copyValue(value, resources, depth + 1);
      if (entry !== PDFNull) copy.set(key, entry);
    }
    return copy;
  };

  const fill = ({ from, to, resources }: Waiting) => {
    copied += 1;
    const isStream = from instanceof PDFRawStream;
    const dict = isStream ? from.dict : from;
    const copy =
      dict instanceof PDFDict ? copyDict(dict, resources, 0, isStream) : copyValue(from, resources, 0);
    if (copy instanceof PDFDict && resources !== undefined && borrowsResources(source, from)) {
      copy.set(RESOURCES, resources);
    }
    target.assign(to, isStream && copy instanceof PDFDict ? PDFRawStream.of(copy, from.contents) : copy);
  };

  const drain = () => {
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      if (copied >= limits.objects) trouble = 'too-large';
      if (trouble === 'too-large') return;
      fill(next);
    }
  };

  return {
    copy: (value, resources) => {
      const copy = copyValue(value, resources, 0);
      drain();
      return copy;
    },
    copyDict: (dict) => {
      const copy = copyDict(dict, undefined, 0, false);
      drain();
      return copy;
    },
    copyResources: (value) => {
      const from = asDict(source, value);
      const known = copies.get(value);
      if (from === undefined || known !== undefined) return known;
      const to = target.nextRef();
      copies.set(value, to);
      waiting.push({ from, to, resources: to });
      drain();
      return to;
    },
    layers,
    trouble: () => trouble,
  };
}

function isLeftBehind(source: PDFContext, value: PDFObject): boolean {
  return value instanceof PDFDict && LEFT_BEHIND.has(asName(source, under(value, 'Type')));
}

/**
 * Whether an object draws with the resources of the page that it is used on, since it has none: forms and tiling
 * patterns, which old files make so, and Type 3 fonts.
 *
 * @source ISO 32000-1, 7.8.3 (forms without resources), 9.6.5 (Type 3 fonts without resources).
 */
function borrowsResources(source: PDFContext, value: PDFObject): boolean {
  const dict = value instanceof PDFRawStream ? value.dict : value;
  if (!(dict instanceof PDFDict) || asDict(source, under(dict, 'Resources')) !== undefined) return false;
  const subtype = asName(source, under(dict, 'Subtype'));
  return value instanceof PDFRawStream
    ? subtype === 'Form' || asNumber(source, under(dict, 'PatternType')) === 1
    : subtype === 'Type3';
}
