// Rendering a part of a page with PDFium.
import type { Size } from '../../shared/geometry/space.ts';
import { chain } from '../../shared/geometry/transform.ts';
import type { Affine } from '../../shared/proof/pageSource.ts';
import type { Picture } from '../../shared/proof/picture.ts';
import type { Raster } from '../../shared/proof/raster.ts';
import type { PdfiumCalls } from './pdfiumCalls.ts';

/** Values of fpdfview.h: four bytes to the pixel, the last unused; red first; annotations drawn; as for a printer. */
const BITMAP_BGRX = 3;
const BYTES_PER_PIXEL = 4;
const WITH_ANNOTATIONS = 0x01;
const RED_FIRST = 0x10;
const FOR_PRINTING = 0x800;
const WHITE = 0xffffffff;

/**
 * Every pixel is the mean of so many times so many finer ones. PDFium lets edges of rectangles, images and small type
 * jump to whole pixels; twice as fine, the jump is 0.04 mm at 150 pixels to the inch.
 */
const SUPERSAMPLING = 2;

/**
 * Everything is moved by this share of a finer pixel. Art drawn in points often has edges in the very middle of a
 * pixel, which rounding would send one way here and another way there: 0.01 pt is 1/24 pixel at 300 to the inch.
 */
const OFFSET_PX = 1 / 48;

/** The size of a matrix of six and of a rectangle of four floats. */
const MATRIX_BYTES = 24;
const CLIP_BYTES = 16;

/** A page that is open, and its size in pt. */
export interface DrawnPage {
  readonly page: number;
  readonly size: Size;
}

/** A smoothed picture of the part of a page that the matrix (pt of the page, y up, to pixels, y down) brings into view. */
export function renderPage(
  pdfium: PdfiumCalls,
  page: DrawnPage,
  matrix: Affine,
  width: number,
  height: number,
): Picture {
  const finer = chain(matrix, { a: SUPERSAMPLING, b: 0, c: 0, d: SUPERSAMPLING, e: OFFSET_PX, f: OFFSET_PX });
  return withBitmap(pdfium, page, finer, width * SUPERSAMPLING, height * SUPERSAMPLING, (memory, from) => ({
    width,
    height,
    pixels: meanOfFour(memory, from, width, height),
  }));
}

/** The same part, each pixel as it was drawn. */
export function rasterisePage(
  pdfium: PdfiumCalls,
  page: DrawnPage,
  matrix: Affine,
  width: number,
  height: number,
): Raster {
  return withBitmap(pdfium, page, matrix, width, height, (memory, from) => ({
    width,
    height,
    words: new Uint32Array(memory.slice(from, from + width * height * BYTES_PER_PIXEL).buffer),
  }));
}

/** Draws and gives what `take` makes of the memory; the bitmap begins at the address that it gets. */
function withBitmap<T>(
  pdfium: PdfiumCalls,
  { page, size }: DrawnPage,
  matrix: Affine,
  w: number,
  h: number,
  take: (memory: Uint8Array, from: number) => T,
): T {
  const buffer = pdfium.wasmExports.malloc(w * h * BYTES_PER_PIXEL + MATRIX_BYTES + CLIP_BYTES);
  if (buffer === 0) throw new Error(`No memory for a picture of ${w} x ${h} pixels`);
  const matrixAddress = buffer + w * h * BYTES_PER_PIXEL;
  const bitmap = pdfium._FPDFBitmap_CreateEx(w, h, BITMAP_BGRX, buffer, w * BYTES_PER_PIXEL);
  try {
    pdfium._FPDFBitmap_FillRect(bitmap, 0, 0, w, h, WHITE);
    // PDFium's matrix starts from the page in pt with y down.
    const { a, b, c, d, e, f } = chain({ a: 1, b: 0, c: 0, d: -1, e: 0, f: size.h }, matrix);
    new Float32Array(pdfium.HEAPU8.buffer, matrixAddress, 10).set([a, b, c, d, e, f, 0, 0, w, h]);
    const flags = WITH_ANNOTATIONS | RED_FIRST | FOR_PRINTING;
    pdfium._FPDF_RenderPageBitmapWithMatrix(bitmap, page, matrixAddress, matrixAddress + MATRIX_BYTES, flags);
    return take(pdfium.HEAPU8, buffer);
  } finally {
    pdfium._FPDFBitmap_Destroy(bitmap);
    pdfium.wasmExports.free(buffer);
  }
}

function meanOfFour(memory: Uint8Array, from: number, width: number, height: number): Uint8Array {
  const pixels = new Uint8Array(width * height * 3);
  const row = width * SUPERSAMPLING * BYTES_PER_PIXEL;
  let to = 0;
  for (let y = 0; y < height; y++) {
    let i = from + y * SUPERSAMPLING * row;
    for (let x = 0; x < width; x++, i += SUPERSAMPLING * BYTES_PER_PIXEL) {
      for (let c = i; c < i + 3; c++) {
        const upper = (memory[c] ?? 0) + (memory[c + BYTES_PER_PIXEL] ?? 0);
        const lower = (memory[c + row] ?? 0) + (memory[c + row + BYTES_PER_PIXEL] ?? 0);
        pixels[to++] = (upper + lower + 2) >> 2;
      }
    }
  }
  return pixels;
}
