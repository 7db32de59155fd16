// A file of art as it is taken in: written as a PDF, read back, known by its pages.
import type { TakenFile } from '../../shared/intake/proposePieces.ts';
import { type PageParts, writePages } from './pdfs.ts';
import { opened } from './placed.ts';

export async function takenFile(name: string, ...parts: PageParts[]): Promise<TakenFile> {
  const art = await opened(writePages(parts), { name });
  const pages = parts.map((_, i) => {
    const page = art.page(i + 1);
    if (!page.ok) throw new Error(page.fault.message);
    return page.value;
  });
  return { art: name, name, pages };
}

/** A page of this size in pt that says nothing of its trim. */
export function plainPage(w: number, h: number): PageParts {
  return { media: [0, 0, w, h] };
}
