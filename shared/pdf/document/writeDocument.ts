// Plain pages as a PDF file: what a person prints in the office and takes to the printer and the knife.
import { PDFDocument, PDFName } from 'pdf-lib';
import type { Size } from '../../geometry/space.ts';
import { type Duplex, describeFile } from '../sheet/describeFile.ts';
import { embedType } from '../sheet/setType.ts';
import type { SheetFont } from '../sheet/sheetFont.ts';
import { drawShape, FACE_NAMES } from './drawShape.ts';
import type { Shape, Weight } from './shape.ts';

/** The faces of type that pages are set in. */
export type Faces = Readonly<Record<Weight, SheetFont>>;

export interface DocumentInput {
  readonly title: string;
  /** When it is made, in UTC: `2026-03-01T14:30:00Z`. */
  readonly created: string;
  readonly paper: Size;
  /** What each page shows. */
  readonly pages: readonly (readonly Shape[])[];
  readonly faces: Faces;
  /** How a printer that prints both sides turns the paper; a run sheet is printed on one side. */
  readonly duplex?: Duplex;
}

export interface WrittenDocument {
  readonly bytes: Uint8Array;
  /** Characters that the type lacks, in words. */
  readonly notices: readonly string[];
}

/** Writes pages of plain shapes. The same input gives the same bytes. */
export async function writeDocument(input: DocumentInput): Promise<WrittenDocument> {
  const { paper, faces } = input;
  const target = await PDFDocument.create({ updateMetadata: false });
  const { context } = target;
  describeFile(target, input.title, input.created, input.duplex ?? 'Simplex');
  const plain = await embedType(target, faces.plain, 'TRNLAY+Plain');
  const strong = await embedType(target, faces.strong, 'TRNLAZ+Strong');
  const types = { plain, strong };
  const fonts = { [FACE_NAMES.plain]: plain.ref, [FACE_NAMES.strong]: strong.ref };
  for (const shapes of input.pages) {
    const page = target.addPage([paper.w, paper.h]).node;
    const operators = shapes.map((shape) => drawShape(shape, (words, weight) => types[weight].encode(words)));
    page.set(PDFName.of('Resources'), context.obj({ Font: fonts }));
    page.set(PDFName.of('Contents'), context.register(context.flateStream(`${operators.join('\n')}\n`)));
  }
  const notices = [...new Set([...plain.notices(), ...strong.notices()])];
  return { bytes: await target.save({ updateFieldAppearances: false }), notices };
}
