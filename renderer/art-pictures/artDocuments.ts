// The art files that are open for pictures: a few at a time, closed when nobody has asked for them for a while.
import { getDocument, type PDFDocumentLoadingTask, type PDFPageProxy } from 'pdfjs-dist';
import { type ArtHandle, artUrl } from '../../shared/contract/handles.ts';
import { type PdfReader, startPdfReader } from './pdfWorker.ts';

/** So many files stay open: reading one again costs little, holding it costs all that was read of it. */
const MAX_OPEN_DOCUMENTS = 4;

export interface ArtDocuments {
  /** A page of the art, from 1. Rejects for a file that cannot be read or has no such page. */
  readonly page: (art: ArtHandle, number: number) => Promise<PDFPageProxy>;
  /** Forgets what was read of a file, because it has changed. */
  readonly forget: (art: ArtHandle) => void;
  /** Closes all files but these. */
  readonly keepOnly: (arts: ReadonlySet<ArtHandle>) => void;
  /** Closes everything and ends the worker; the next page that is asked for starts it again. */
  readonly close: () => void;
}

export function openArtDocuments(): ArtDocuments {
  let reader: PdfReader | undefined;
  /** Oldest use first. */
  const open = new Map<ArtHandle, PDFDocumentLoadingTask>();

  const forget = (art: ArtHandle) => {
    void open.get(art)?.destroy();
    open.delete(art);
  };
  const close = () => {
    for (const art of [...open.keys()]) forget(art);
    reader?.end();
    reader = undefined;
  };
  const start = (): PdfReader => {
    const started = startPdfReader();
    started.failed.catch(() => {
      if (reader === started) close();
    });
    return started;
  };

  return {
    page: async (art, number) => {
      reader ??= start();
      const { worker, failed } = reader;
      const task = open.get(art) ?? getDocument({ ...READING, url: addressOf(artUrl(art)), worker });
      open.delete(art);
      open.set(art, task);
      for (const [oldest] of open) {
        if (open.size <= MAX_OPEN_DOCUMENTS) break;
        forget(oldest);
      }
      const document = await Promise.race([task.promise, failed]);
      return Promise.race([document.getPage(number), failed]);
    },
    forget,
    keepOnly: (arts) => {
      for (const art of [...open.keys()]) if (!arts.has(art)) forget(art);
    },
    close,
  };
}

const addressOf = (path: string) => new URL(path, location.href).href;

/** Only what a page needs is fetched; fonts, colours and decoders are those that came with the window. */
const READING = {
  disableAutoFetch: true,
  disableStream: true,
  rangeChunkSize: 2 ** 18,
  useWorkerFetch: true,
  useSystemFonts: false,
  cMapUrl: addressOf('/pdfjs/cmaps/'),
  standardFontDataUrl: addressOf('/pdfjs/standard_fonts/'),
  wasmUrl: addressOf('/pdfjs/wasm/'),
  iccUrl: addressOf('/pdfjs/iccs/'),
} as const;
