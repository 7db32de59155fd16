// The sheets of a job as PDF files: one page for each form, in the frame of its side, lead edge at the top.
import { PDFDocument, type PDFRef } from 'pdf-lib';
import { ok, type Result } from '../../fault/result.ts';
import type { Size } from '../../geometry/space.ts';
import type { Work } from '../../geometry/work.ts';
import { groupByFile } from '../../layout/forms.ts';
import type { Form } from '../../layout/placement.ts';
import type { FaceName } from '../../layout/position.ts';
import type { Mark } from '../../marks/mark.ts';
import { describeFile, duplexOf } from './describeFile.ts';
import { drawMark } from './drawMarks.ts';
import { drawFace, type PlacedFace } from './placeFace.ts';
import { embedType, NO_TYPE } from './setType.ts';
import type { SheetFont } from './sheetFont.ts';
import { addSheetPage } from './sheetPage.ts';

/** Gives one PDF document the art that is placed in it. */
export interface FaceSource {
  /**
   * The art of one face of a piece, trim and bleed, head up: the same form whenever the same face is asked for.
   * `undefined` where the face has no art.
   */
  faceOf(piece: string, face: FaceName): Result<PlacedFace | undefined>;
  /** Called once all faces are placed; what the person should know of the art, in words. */
  finish(): readonly string[];
}

/** One form with the marks around it. */
export interface SheetForm {
  readonly form: Form;
  readonly marks: readonly Mark[];
}

export interface SheetsInput {
  readonly sheet: Size;
  readonly work: Work;
  readonly forms: readonly SheetForm[];
  readonly openFaces: (target: PDFDocument) => FaceSource;
  readonly font: SheetFont;
  /** The title of the job. */
  readonly title: string;
  /** When the files are made, in UTC: `2026-03-01T14:30:00Z`. */
  readonly created: string;
}

/** One PDF file, and the form that each of its pages prints. */
export interface SheetFile {
  readonly forms: readonly Form[];
  readonly bytes: Uint8Array;
}

export interface WrittenSheets {
  readonly files: readonly SheetFile[];
  /** What the person should know, each only once. */
  readonly notices: readonly string[];
}

/**
 * Writes the forms of a job: a file for each form, except that a printer which turns the sheet itself gets both sides
 * as the two pages of one file.
 *
 * The same input gives the same bytes. A fault of the art is handed on.
 */
export async function writeSheets(input: SheetsInput): Promise<Result<WrittenSheets>> {
  const files: SheetFile[] = [];
  const notices = new Set<string>();
  for (const forms of groupByFile(input.work, input.forms)) {
    const written = await writeFile(input, forms);
    if (!written.ok) return written;
    files.push({ forms: forms.map((f) => f.form), bytes: written.value.bytes });
    for (const notice of written.value.notices) notices.add(notice);
  }
  return ok({ files, notices: [...notices] });
}

/** Everything in one go: the host runs this where waiting does not matter. */
const SAVING = { objectsPerTick: Number.POSITIVE_INFINITY, updateFieldAppearances: false };

async function writeFile(
  input: SheetsInput,
  forms: readonly SheetForm[],
): Promise<Result<{ readonly bytes: Uint8Array; readonly notices: readonly string[] }>> {
  const target = await PDFDocument.create({ updateMetadata: false });
  describeFile(target, input.title, input.created, duplexOf(input.sheet, input.work));
  const faces = input.openFaces(target);
  const hasWords = forms.some((f) => f.marks.some((m) => m.kind === 'words'));
  const type = hasWords ? await embedType(target, input.font) : NO_TYPE;
  for (const { form, marks } of forms) {
    const placed = placeFaces(form, faces);
    if (!placed.ok) return placed;
    addSheetPage(target, input.sheet, {
      operators: [...placed.value.operators, ...marks.map((m) => drawMark(m, type.encode))],
      forms: placed.value.forms,
      face: type.ref,
    });
  }
  const notices = [...faces.finish(), ...type.notices()];
  return ok({ bytes: await target.save(SAVING), notices });
}

/** The operators for every face of a form, and the names of the art they draw; each art is named once. */
function placeFaces(
  form: Form,
  faces: FaceSource,
): Result<{ readonly operators: readonly string[]; readonly forms: Readonly<Record<string, PDFRef>> }> {
  const names = new Map<PDFRef, string>();
  const operators: string[] = [];
  for (const placement of form.placements) {
    const face = faces.faceOf(placement.piece, placement.face);
    if (!face.ok) return face;
    if (face.value === undefined) continue;
    const name = names.get(face.value.form) ?? `Art${names.size + 1}`;
    names.set(face.value.form, name);
    operators.push(drawFace(placement, face.value.bleed, name));
  }
  return ok({ operators, forms: Object.fromEntries([...names].map(([ref, name]) => [name, ref])) });
}
