// The side as a whole: its page is the sheet, all of it is shown, and the file has the pages it should.
import type { Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { showSize } from '../units/show.ts';
import type { SheetFinding, SideNumber } from './finding.ts';

/** What the renderer says of a written page, in pt. */
interface WrittenPage {
  /** The whole page: its media box. */
  readonly page: Size;
  /** What is shown of it: its crop box. */
  readonly shown: Size;
  /** The pages of its file. */
  readonly pages: number;
}

/** Checks a written page against the sheet (pt) and, where given, the number of pages its file should have. */
export function checkSide(
  side: SideNumber,
  written: WrittenPage,
  sheet: Size,
  pages: number | undefined,
): readonly SheetFinding[] {
  const { page, shown } = written;
  const findings: SheetFinding[] = [];
  if (!sameSize(page, sheet)) {
    const message = `Side ${side}: the page is ${both(page)}, the sheet ${both(sheet)}. Its positions were not compared.`;
    findings.push({ kind: 'sheet-size', side, message, measured: { page, sheet } });
  }
  if (!sameSize(shown, page)) {
    const message = `Side ${side}: only ${both(shown)} of the page of ${both(page)} are shown, because it is cropped.`;
    findings.push({ kind: 'sheet-cropped', side, message, measured: { shown, page } });
  }
  if (pages !== undefined && written.pages !== pages) {
    const message = `Side ${side}: the file has ${written.pages} pages where it should have ${pages}.`;
    findings.push({ kind: 'page-count', side, message, measured: { pages: written.pages, wanted: pages } });
  }
  return findings;
}

/** Whether a page of this size can be compared with the sheet at all. */
export function sameSize(a: Size, b: Size): boolean {
  return same(a.w, b.w) && same(a.h, b.h);
}

function both(size: Size): string {
  return `${showSize(size, 'mm')} (${showSize(size, 'in')})`;
}
