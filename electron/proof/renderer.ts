// The renderer that had no part in writing the sheets: PDFium, as a WebAssembly library.
import { PDFiumModule } from '@hyzyla/pdfium';
import type { Size } from '../../shared/geometry/space.ts';
import type { PageSource } from '../../shared/proof/pageSource.ts';
import type { PdfiumCalls } from './pdfiumCalls.ts';
import { rasterisePage, renderPage } from './renderPage.ts';

/** A page that is open. `shown` is what viewers show of it (its crop box), the source is all of it (its media box). */
export interface OpenPage {
  readonly shown: Size;
  readonly source: PageSource;
}

/** A document that is open. */
export interface OpenDocument {
  readonly pages: number;
  /** The page with this number, from 1; `undefined` where there is none or it cannot be read. */
  page(number: number): OpenPage | undefined;
}

/** Why a document did not open. */
type Unopened = 'locked' | 'damaged';

/** The renderer broke on a file that it took for a PDF. It must not be used after that. */
export class RendererBroke extends Error {}

/** Values of fpdfview.h and fpdf_annot.h. */
const ERROR_PASSWORD = 4;
const FLAG_HIDDEN = 1 << 1;
const FLAG_PRINT = 1 << 2;
const NORMAL_APPEARANCE = 0;
/** The length of an appearance that is not there: an empty text and its end mark. */
const NO_APPEARANCE = 2;
/** A crop box that holds any page. */
const CROP_BOX_OF_ALL_PT = 1e6;

/** A library that has grown larger than this, in bytes, is not kept: its memory cannot shrink. */
const MAX_KEPT_BYTES = 256 * 2 ** 20;

/** Libraries that are not in use. Starting one takes a tenth of a second, and the code of a used one is faster. */
const idle: PdfiumCalls[] = [];

/** A renderer of one's own, until it is closed. */
export class Renderer {
  private readonly closing: (() => void)[] = [];
  private readonly opened = new Map<Uint8Array, OpenDocument>();

  private constructor(private readonly pdfium: PdfiumCalls) {}

  static async start(): Promise<Renderer> {
    const kept = idle.pop();
    if (kept !== undefined) return new Renderer(kept);
    const pdfium = (await PDFiumModule({})) as unknown as PdfiumCalls;
    pdfium._FPDF_InitLibraryWithConfig({});
    return new Renderer(pdfium);
  }

  /**
   * Opens a PDF, once however often it is asked for. One that is only protected against changes opens, one that needs a
   * password does not.
   *
   * @throws RendererBroke
   */
  open(bytes: Uint8Array): OpenDocument | Unopened {
    const known = this.opened.get(bytes);
    if (known !== undefined) return known;
    const document = this.openAnew(bytes);
    if (typeof document !== 'string') this.opened.set(bytes, document);
    return document;
  }

  private openAnew(bytes: Uint8Array): OpenDocument | Unopened {
    const { pdfium } = this;
    return guarded(() => {
      const address = pdfium.wasmExports.malloc(bytes.length);
      pdfium.HEAPU8.set(bytes, address);
      const document = pdfium._FPDF_LoadMemDocument(address, bytes.length, 0);
      if (document === 0) {
        const locked = pdfium._FPDF_GetLastError() === ERROR_PASSWORD;
        pdfium.wasmExports.free(address);
        return locked ? 'locked' : 'damaged';
      }
      this.closing.push(() => {
        pdfium._FPDF_CloseDocument(document);
        pdfium.wasmExports.free(address);
      });
      const opened = new Map<number, OpenPage | undefined>();
      return {
        pages: pdfium._FPDF_GetPageCount(document),
        page: (number) => {
          if (!opened.has(number)) opened.set(number, this.openPage(document, number));
          return opened.get(number);
        },
      };
    });
  }

  /** Frees everything that was opened, last first. A renderer that broke must not be closed but left. */
  close(): void {
    for (const close of this.closing.splice(0).reverse()) close();
    if (this.pdfium.HEAPU8.length <= MAX_KEPT_BYTES) idle.push(this.pdfium);
    else this.pdfium._FPDF_DestroyLibrary();
  }

  private openPage(document: number, number: number): OpenPage | undefined {
    const { pdfium } = this;
    return guarded(() => {
      const cropped = pdfium._FPDF_LoadPage(document, number - 1);
      if (cropped === 0) return undefined;
      const shown = sizeOf(pdfium, cropped);
      removeWhatDoesNotPrint(pdfium, cropped);
      // The art is measured from its media box, and its bleed may lie outside of its crop box.
      pdfium._FPDFPage_SetCropBox(
        cropped,
        -CROP_BOX_OF_ALL_PT,
        -CROP_BOX_OF_ALL_PT,
        CROP_BOX_OF_ALL_PT,
        CROP_BOX_OF_ALL_PT,
      );
      pdfium._FPDF_ClosePage(cropped);
      const page = pdfium._FPDF_LoadPage(document, number - 1);
      if (page === 0) return undefined;
      this.closing.push(() => pdfium._FPDF_ClosePage(page));
      const size = sizeOf(pdfium, page);
      return {
        shown,
        source: {
          size,
          render: (matrix, width, height) =>
            guarded(() => renderPage(pdfium, { page, size }, matrix, width, height)),
          rasterise: (matrix, width, height) =>
            guarded(() => rasterisePage(pdfium, { page, size }, matrix, width, height)),
        },
      };
    });
  }
}

function sizeOf(pdfium: PdfiumCalls, page: number): Size {
  return { w: pdfium._FPDF_GetPageWidthF(page), h: pdfium._FPDF_GetPageHeightF(page) };
}

/** Takes off annotations that are not printed, and those without an appearance of their own. */
function removeWhatDoesNotPrint(pdfium: PdfiumCalls, page: number): void {
  for (let i = pdfium._FPDFPage_GetAnnotCount(page) - 1; i >= 0; i--) {
    const annotation = pdfium._FPDFPage_GetAnnot(page, i);
    if (annotation === 0) continue;
    const flags = pdfium._FPDFAnnot_GetFlags(annotation);
    const appearance = pdfium._FPDFAnnot_GetAP(annotation, NORMAL_APPEARANCE, 0, 0);
    pdfium._FPDFPage_CloseAnnot(annotation);
    const prints = (flags & FLAG_PRINT) !== 0 && (flags & FLAG_HIDDEN) === 0 && appearance > NO_APPEARANCE;
    if (!prints) pdfium._FPDFPage_RemoveAnnot(page, i);
  }
}

/** How WebAssembly breaks down: on its own mistakes, or because a file nests too deep. */
const BREAKDOWNS: ReadonlySet<string> = new Set(['RuntimeError', 'RangeError']);

/** Does it, and tells a breakdown of the renderer from our own mistakes. */
function guarded<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Error) || !BREAKDOWNS.has(error.name)) throw error;
    throw new RendererBroke(error.message, { cause: error });
  }
}
