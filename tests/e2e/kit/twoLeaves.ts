// Art that comes as two files of one page each, under names that do not say which is the front.
import { writeFileSync } from 'node:fs';
import { degrees, PDFDocument } from 'pdf-lib';
import { drawSupper } from '../../../electron/demo/art.ts';
import type { Studio } from './studio.ts';

/** The front in `leaf one.pdf` and the back in `leaf two.pdf`; the back may stand on its head, as a careless hand leaves it. */
export async function putTwoLeaves(studio: Studio, backOnItsHead = false): Promise<readonly string[]> {
  const both = await PDFDocument.load(await drawSupper(new Date('2026-09-01T12:00:00Z')));
  const names = ['leaf one.pdf', 'leaf two.pdf'];
  for (const [index, name] of names.entries()) {
    const one = await PDFDocument.create();
    const [page] = await one.copyPages(both, [index]);
    if (page === undefined) throw new Error('The art has two pages');
    if (index === 1 && backOnItsHead) page.setRotation(degrees(180));
    one.addPage(page);
    writeFileSync(studio.at(name), await one.save());
  }
  return names.map((name) => studio.at(name));
}
