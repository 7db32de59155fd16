// Reading pages of the art: what the host found on them, and the page itself for drawing.
import type { PDFPageProxy } from 'pdfjs-dist';
import type { Art } from '../../shared/contract/art.ts';
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { ArtPage } from '../../shared/pdf/art/artPage.ts';
import { openArtDocuments } from './artDocuments.ts';

export interface ReadPage {
  readonly page: ArtPage;
  readonly drawable: PDFPageProxy;
}

export interface ArtReading {
  /** A page of the art, from 1. */
  readonly page: (art: ArtHandle, number: number) => Promise<Result<ReadPage>>;
  /** Forgets what was read of a file, because it has changed. */
  readonly forget: (art: ArtHandle) => void;
  /** Closes all files but these. */
  readonly keepOnly: (arts: ReadonlySet<ArtHandle>) => void;
  readonly close: () => void;
}

/** `look` asks the host what it finds in a file. */
export function openArtReading(look: (art: ArtHandle) => Promise<Result<Art>>): ArtReading {
  const documents = openArtDocuments();
  const looked = new Map<ArtHandle, Promise<Result<Art>>>();
  return {
    page: async (art, number) => {
      const asked = looked.get(art) ?? look(art);
      looked.set(art, asked);
      try {
        const found = await asked;
        if (!found.ok) return found;
        const page = found.value.pages[number - 1];
        if (page === undefined) return refuse(pageMissing(found.value.name, number));
        return ok({ page, drawable: await documents.page(art, number) });
      } catch (error) {
        return refuse(notDrawn(error));
      }
    },
    forget: (art) => {
      documents.forget(art);
      looked.delete(art);
    },
    keepOnly: (arts) => {
      documents.keepOnly(arts);
      for (const art of [...looked.keys()]) if (!arts.has(art)) looked.delete(art);
    },
    close: () => {
      documents.close();
      looked.clear();
    },
  };
}

function pageMissing(name: string, number: number): Fault {
  return {
    code: 'art-page-missing',
    message: `${name} has no page ${number} any more.`,
    remedy: 'Recheck art, or put the earlier file back.',
  };
}

/** The fault of art that is whole to the host, but that could not be drawn for the screen. */
export function notDrawn(error: unknown): Fault {
  return {
    code: 'art-damaged',
    message: `The art could not be drawn: ${error instanceof Error ? error.message : String(error)}`,
    remedy:
      'Export the page again from the program that made it. The proof will show what is really printed.',
  };
}
