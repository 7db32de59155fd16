// One page of the art as a form: its drawing as the file packs it, with the annotations that print on top.
import { type PDFContext, type PDFDict, PDFName, PDFRawStream, PDFRef } from 'pdf-lib';
import { type Fault, ok, type Result, refuse } from '../../fault/result.ts';
import type { Head } from '../../geometry/head.ts';
import type { Rect } from '../../geometry/space.ts';
import { applyToRect, chain, inverse, type Transform } from '../../geometry/transform.ts';
import { type ArtPage, named } from '../art/artPage.ts';
import type { Leaf } from '../art/pageTree.ts';
import { asDict, asName, asStream, under } from '../art/peek.ts';
import { turnArt } from '../art/turnArt.ts';
import { type Annotations, type PrintedAnnotation, readAnnotations, STAYS } from './annotations.ts';
import type { Copier, CopyTrouble, PlacedArt } from './copyObjects.ts';
import { readDrawing } from './drawing.ts';

/** A form made of a page, and what was noticed on the way, in words. */
export interface PageForm {
  readonly form: PDFRef;
  readonly notices: readonly string[];
}

/** What of the page a form shows, as the page's file counts, and where that goes. */
interface Cut {
  readonly box: Rect<'user'>;
  readonly matrix: Transform<'user', 'art' | 'user'>;
}

/**
 * Makes the form of page `n`, turned counter-clockwise by `rotate` and cut to `box` (pt, on the turned page), with
 * the lower left of the box at the origin.
 *
 * @source ISO 32000-1, 8.10 (form XObjects): BBox is in the page's own coordinates, Matrix turns them upright.
 */
export function makePageForm(
  target: PDFContext,
  { art, copier }: PlacedArt,
  n: number,
  rotate: Head,
  box: Rect<'art'>,
): Result<PageForm> {
  const read = art.page(n);
  if (!read.ok) return read;
  const found = art.leaf(n);
  if (!found.ok) return found;
  const page = read.value;
  const leaf = found.value;

  const drawing = readDrawing(leaf, art.limits);
  if (drawing === 'too-large') return refuse(notCopied(page, drawing));
  if (drawing === 'unreadable') return refuse(notCopied(page, 'damaged'));
  const annotations = readAnnotations(leaf, page);

  const turned = chain(page.toArt, turnArt(page.size, rotate));
  const upright: Cut = {
    box: applyToRect(inverse(turned), box),
    matrix: { ...turned, e: turned.e - box.x, f: turned.f - box.y },
  };
  const alone = annotations.printed.length === 0;
  const stream =
    'packed' in drawing ? repack(target, drawing.packed, copier) : target.flateStream(drawing.plain);
  const resources = copyResources(leaf, copier);
  const drawn = addForm(target, stream, alone ? upright : { ...upright, matrix: STAYS }, resources);
  const group = copyGroup(leaf, copier);
  if (group !== undefined) stream.dict.set(PDFName.of('Group'), group);
  const form = alone ? drawn : addOverlay(target, copier, drawn, annotations.printed, resources, upright);

  const trouble = copier.trouble();
  if (trouble !== undefined) return refuse(notCopied(page, trouble));
  const mended = 'plain' in drawing && drawing.mended ? [mendedWords(page)] : [];
  return ok({ form, notices: [...page.notices, ...mended, ...annotationWords(page, annotations)] });
}

/** The same bytes under the same filters, in the target file. */
function repack(target: PDFContext, packed: PDFRawStream, copier: Copier): PDFRawStream {
  const stream = PDFRawStream.of(target.obj({}), packed.contents);
  for (const key of ['Filter', 'DecodeParms']) {
    const value = under(packed.dict, key);
    if (value !== undefined) stream.dict.set(PDFName.of(key), copier.copy(value));
  }
  return stream;
}

function copyResources(leaf: Leaf, copier: Copier): PDFRef | undefined {
  const { Resources } = leaf.inherited;
  return Resources === undefined ? undefined : copier.copyResources(Resources);
}

function addForm(
  target: PDFContext,
  stream: PDFRawStream,
  { box, matrix: m }: Cut,
  resources: PDFRef | PDFDict | undefined,
): PDFRef {
  const entries = {
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [box.x, box.y, box.x + box.w, box.y + box.h],
    Matrix: [m.a, m.b, m.c, m.d, m.e, m.f],
    Resources: resources ?? {},
  };
  for (const [key, value] of Object.entries(entries)) stream.dict.set(PDFName.of(key), target.obj(value));
  return target.register(stream);
}

/**
 * The transparency group of a page. A page's group is isolated whatever it says, and so must the form's be.
 *
 * @source ISO 32000-1, 11.4.7 (page group), Table 147 (group attributes).
 */
function copyGroup({ dict }: Leaf, copier: Copier): PDFDict | undefined {
  const group = asDict(dict.context, under(dict, 'Group'));
  if (group === undefined || asName(dict.context, under(group, 'S')) !== 'Transparency') return undefined;
  const copy = copier.copyDict(group);
  copy.set(PDFName.of('I'), copy.context.obj(true));
  return copy;
}

/** A form that shows the page's form, and over it each annotation at its place and on its layer. */
function addOverlay(
  target: PDFContext,
  copier: Copier,
  drawn: PDFRef,
  printed: readonly PrintedAnnotation[],
  resources: PDFRef | undefined,
  upright: Cut,
): PDFRef {
  const forms: Record<string, PDFRef> = { Page: drawn };
  const layers: Record<string, PDFRef> = {};
  const operators = printed.map(({ appearance, placing: m, layer }, i) => {
    const form = copier.copy(appearance, resources);
    if (!(form instanceof PDFRef)) return '';
    asStream(target, form)?.dict.set(PDFName.of('Subtype'), PDFName.of('Form'));
    forms[`Note${i}`] = form;
    const shown = `q ${[m.a, m.b, m.c, m.d, m.e, m.f].map(plain).join(' ')} cm /Note${i} Do Q`;
    const on = layer === undefined ? undefined : copier.copy(layer);
    if (!(on instanceof PDFRef)) return shown;
    layers[`Layer${i}`] = on;
    return `/OC /Layer${i} BDC ${shown} EMC`;
  });
  const stream = target.flateStream(['/Page Do', ...operators].join('\n'));
  return addForm(target, stream, upright, target.obj({ XObject: forms, Properties: layers }));
}

/** A number as a content stream takes it: to a millionth, without an exponent. */
function plain(value: number): string {
  return `${Number(value.toFixed(6))}`;
}

function mendedWords(page: ArtPage): string {
  return `The drawing of ${named(page)} did not close all that it opened, or closed what it had not; this was set right.`;
}

function annotationWords(page: ArtPage, { silent, shapeless }: Annotations): readonly string[] {
  const words: string[] = [];
  if (silent > 0) words.push(`${counted(silent)} on ${named(page)} set not to print, and left out.`);
  if (shapeless > 0) {
    words.push(
      `${counted(shapeless)} on ${named(page)} set to print but without anything to show, and left out.`,
    );
  }
  return words;
}

function counted(notes: number): string {
  return notes === 1 ? 'One note, stamp or form field is' : `${notes} notes, stamps or form fields are`;
}

function notCopied(page: ArtPage, trouble: CopyTrouble): Fault {
  return trouble === 'too-large'
    ? {
        code: 'art-too-large',
        message: `There is more in ${named(page)} than can be placed safely.`,
        remedy: 'Simplify the page, or turn its most detailed drawings into pictures, and export it again.',
        where: page.art,
      }
    : {
        code: 'art-damaged',
        message: `Part of ${named(page)} is damaged and cannot be read.`,
        remedy: 'Ask for the file again, or export it again.',
        where: page.art,
      };
}
