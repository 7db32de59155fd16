// The page of one sheet: its boxes, what it prints, and the resources that this takes.
import { type PDFDocument, PDFName, type PDFRef } from 'pdf-lib';
import type { Size } from '../../geometry/space.ts';
import { MARK_RESOURCES } from './drawMarks.ts';

/** What a page prints and with what. */
export interface SheetContent {
  readonly operators: readonly string[];
  /** The forms that the operators draw, by the names they use. */
  readonly forms: Readonly<Record<string, PDFRef>>;
  /** The face of the marks; none where no words are printed. */
  readonly face: PDFRef | undefined;
}

/**
 * Adds the page of a sheet, in the frame of its side.
 *
 * Media, bleed and trim box are all the whole sheet, and the crop box, not being set, is too. What leaves this page is
 * the sheet: the pieces are cut from it later, and a RIP that centres, crops or scales by any of the boxes must find
 * the same sheet by each of them, or it would move the image on the paper.
 *
 * @source ISO 32000-1, 14.11.2, for what the boxes mean; 8.6.6.4 for the colorant All.
 */
export function addSheetPage(target: PDFDocument, sheet: Size, content: SheetContent): void {
  const { context } = target;
  const page = target.addPage([sheet.w, sheet.h]).node;
  const whole = [0, 0, sheet.w, sheet.h];
  for (const box of ['MediaBox', 'BleedBox', 'TrimBox']) {
    page.set(PDFName.of(box), context.obj(whole));
  }
  const onEveryPlate = { FunctionType: 2, Domain: [0, 1], C0: [0, 0, 0, 0], C1: [1, 1, 1, 1], N: 1 };
  const resources = {
    XObject: content.forms,
    ColorSpace: { [MARK_RESOURCES.allPlates]: ['Separation', 'All', 'DeviceCMYK', onEveryPlate] },
    Font: content.face === undefined ? {} : { [MARK_RESOURCES.face]: content.face },
  };
  page.set(PDFName.of('Resources'), context.obj(resources));
  const operators = context.flateStream(`${content.operators.join('\n')}\n`);
  page.set(PDFName.of('Contents'), context.register(operators));
}
