// What a sheet file says of itself, and what it asks of whoever prints it from a viewer.
import { type PDFDocument, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import { edgeOfTurn } from '../../geometry/perfecting.ts';
import type { Size } from '../../geometry/space.ts';
import type { Work } from '../../geometry/work.ts';

/**
 * Sets the document information and the printing preferences.
 *
 * The file claims no standard that was not checked, and does not know whether its art is trapped. A viewer is asked
 * not to scale; a file with both sides says about which edge the printer turns the sheet. There is no file identifier:
 * it would have to be made from a clock or from all of the art, and two equal files shall be equal in every byte.
 *
 * @param created in UTC, `2026-03-01T14:30:00Z`; throws for anything else.
 * @source ISO 32000-1, 14.3.3 (information), 7.9.4 (dates), 12.2 (PrintScaling, Duplex).
 */
export function describeFile(target: PDFDocument, title: string, created: string, duplex: Duplex): void {
  const { context } = target;
  const date = PDFString.of(pdfDate(created));
  const information = context.obj({
    Title: PDFHexString.fromText(title.replace(/\p{Surrogate}/gu, '\uFFFD')),
    Creator: PDFString.of('Turnlay'),
    Producer: PDFString.of('Turnlay with @cantoo/pdf-lib'),
    CreationDate: date,
    ModDate: date,
    Trapped: 'Unknown',
  });
  context.trailerInfo.Info = context.register(information);
  const preferences = context.obj({
    PrintScaling: 'None',
    Duplex: duplex,
    DisplayDocTitle: true,
  });
  target.catalog.set(PDFName.of('ViewerPreferences'), preferences);
}

/** How a sheet is printed: on one side at a time, or turned by the printer about one of its edges. */
export type Duplex = 'Simplex' | 'DuplexFlipLongEdge' | 'DuplexFlipShortEdge';

/** How a duplex printer has to turn the sheet, or that it prints one side at a time. */
export function duplexOf(sheet: Size, work: Work): Duplex {
  if (work.style !== 'perfecting') return 'Simplex';
  const edge = edgeOfTurn(work.turn, sheet);
  return edge === 'long' ? 'DuplexFlipLongEdge' : 'DuplexFlipShortEdge';
}

function pdfDate(created: string): string {
  const parts = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d):(\d\d)(?:\.\d+)?Z$/.exec(created);
  if (parts === null) throw new Error(`${created} is not a time in UTC`);
  return `D:${parts.slice(1).join('')}Z`;
}
