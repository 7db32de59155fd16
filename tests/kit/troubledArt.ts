// Cards of 5 x 7 in as they come from strangers: written carelessly, damaged, or locked.
import { CARD, type FileParts, type PageParts, signpost, writePages } from './pdfs.ts';
import { throughQpdf } from './qpdf.ts';

export const PASSWORD = 'sesame';

const card = (more: Partial<PageParts> = {}, file: FileParts = {}): Uint8Array => {
  const page: PageParts = { media: CARD, trim: [9, 9, 369, 513], drawing: signpost(CARD), ...more };
  return writePages([page, page], file);
};

/** A card without its table of objects and its trailer: whoever reads it has to look for its objects. */
export function carelessCard(): Uint8Array {
  const whole = card();
  return whole.slice(0, Buffer.from(whole).indexOf('xref'));
}

/** A card whose font has a width that is no number: it is read only after it has been written anew. */
export const damagedCard = (): Uint8Array =>
  card(
    { resources: '/Font << /F1 3 0 R >>' },
    { objects: { 3: '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Widths [--3] >>' } },
  );

/** A card that opens, but whose resources are nested deeper than is ever placed. */
export const tangledCard = (): Uint8Array =>
  card({ resources: `/Properties << /Deep ${'['.repeat(300)}${']'.repeat(300)} >>` });

/** A card that opens with {@link PASSWORD} alone. */
export const lockedCard = (): Uint8Array => throughQpdf(card(), '--encrypt', PASSWORD, 'owner', '256', '--');
