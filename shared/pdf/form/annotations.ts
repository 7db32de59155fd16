// Annotations that print: stamps, notes and form fields that lie on a page and belong to what its reader sees on paper.
import type { PDFContext, PDFDict, PDFObject, PDFRawStream } from 'pdf-lib';
import type { Rect } from '../../geometry/space.ts';
import { applyToRect, chain, type Transform } from '../../geometry/transform.ts';
import type { ArtPage } from '../art/artPage.ts';
import { readRectangle } from '../art/boxes.ts';
import type { Leaf } from '../art/pageTree.ts';
import { asDict, asName, asNumber, asNumbers, asStream, entriesOf, follow, under } from '../art/peek.ts';

/** An annotation as it is drawn on paper. */
export interface PrintedAnnotation {
  /** The form that shows it, as it stands in the file. */
  readonly appearance: PDFObject;
  /** What brings that form, after its own matrix, to its place on the page as the file counts. */
  readonly placing: Transform<'user', 'user'>;
  /** The layer it lies on. */
  readonly layer: PDFObject | undefined;
}

export interface Annotations {
  readonly printed: readonly PrintedAnnotation[];
  /** How many do not print, links not counted. */
  readonly silent: number;
  /** How many would print but do not hold what they look like. */
  readonly shapeless: number;
}

/** @source ISO 32000-1, Table 165: annotation flags, by bit position. */
const FLAGS = { hidden: 1 << 1, print: 1 << 2, noRotate: 1 << 4 } as const;

/** Kinds that never print by themselves: links show nothing, a popup belongs to its note. */
const NEVER_PRINTED: ReadonlySet<string | undefined> = new Set(['Link', 'Popup']);

/** Leaves everything where it is. */
export const STAYS: Transform<'user', 'user'> = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** Sorts the annotations of a page into those that print, in the order in which they lie, and those that do not. */
export function readAnnotations(leaf: Leaf, page: ArtPage): Annotations {
  const { context } = leaf.dict;
  const printed: PrintedAnnotation[] = [];
  let silent = 0;
  let shapeless = 0;
  for (const entry of entriesOf(context, under(leaf.dict, 'Annots'))) {
    const annotation = asDict(context, entry);
    if (annotation === undefined || NEVER_PRINTED.has(asName(context, under(annotation, 'Subtype'))))
      continue;
    const flags = asNumber(context, under(annotation, 'F')) ?? 0;
    if ((flags & FLAGS.print) === 0 || (flags & FLAGS.hidden) !== 0) {
      silent += 1;
      continue;
    }
    const look = lookOf(context, annotation);
    if (look === undefined) shapeless += 1;
    if (look === undefined || look === 'nothing') continue;
    const rect = readRectangle(context, under(annotation, 'Rect'));
    const placing = rect === undefined ? undefined : placingOf(context, look.stream, rect);
    if (rect === undefined || placing === undefined) continue;
    const upright = (flags & FLAGS.noRotate) === 0 ? STAYS : turnBack(rect, page);
    printed.push({
      appearance: look.value,
      placing: chain(placing, upright),
      layer: under(annotation, 'OC'),
    });
  }
  return { printed, silent, shapeless };
}

/**
 * The normal appearance in the annotation's present state; `nothing` for a state that shows nothing, such as an
 * empty tick box.
 */
function lookOf(
  context: PDFContext,
  annotation: PDFDict,
): { readonly value: PDFObject; readonly stream: PDFRawStream } | 'nothing' | undefined {
  const appearances = asDict(context, under(annotation, 'AP'));
  const normal = appearances === undefined ? undefined : under(appearances, 'N');
  const states = asDict(context, normal);
  const state = asName(context, under(annotation, 'AS'));
  const value = states === undefined ? normal : state === undefined ? undefined : under(states, state);
  const stream = asStream(context, value);
  if (value !== undefined && stream !== undefined) return { value, stream };
  return states === undefined || follow(context, normal) === undefined ? undefined : 'nothing';
}

/**
 * Brings the appearance's box, after its own matrix, onto the annotation's rectangle. `undefined` for a box without
 * any area, which shows nothing.
 *
 * @source ISO 32000-1, 12.5.5, Algorithm 8.1.
 */
function placingOf(
  context: PDFContext,
  { dict }: PDFRawStream,
  rect: Rect<'user'>,
): Transform<'user', 'user'> | undefined {
  const box = readRectangle(context, under(dict, 'BBox'));
  if (box === undefined) return undefined;
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = asNumbers(context, under(dict, 'Matrix'), 6) ?? [];
  const own: Transform<'user', 'user'> = { a, b, c, d, e, f };
  const shown = applyToRect(own, box);
  if (shown.w === 0 || shown.h === 0) return undefined;
  const across = rect.w / shown.w;
  const up = rect.h / shown.h;
  return { a: across, b: 0, c: 0, d: up, e: rect.x - across * shown.x, f: rect.y - up * shown.y };
}

/** Turns an annotation that stays upright about its upper left corner, against the Rotate of its page. */
function turnBack(rect: Rect<'user'>, page: ArtPage): Transform<'user', 'user'> {
  const { a, b, c, d } = page.toArt;
  const about = { x: rect.x, y: rect.y + rect.h };
  const turn = { a: a / page.userUnit, b: c / page.userUnit, c: b / page.userUnit, d: d / page.userUnit };
  return {
    ...turn,
    e: about.x - turn.a * about.x - turn.c * about.y,
    f: about.y - turn.b * about.x - turn.d * about.y,
  };
}
