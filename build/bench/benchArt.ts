// Art for benchmarks: cards with a photograph that does not compress, and fine vector work over it.
import { degrees, PDFDocument, PDFName, type PDFPage, rgb } from '@cantoo/pdf-lib';

/** A card of the benchmarks, in pt. */
export const BENCH_CARD = { trim: { w: 144, h: 90 }, bleed: 9 } as const;

/** A PDF of this many cards, each with a photograph of about `kilobytes`. The same numbers give the same bytes. */
export async function drawBenchArt(pages: number, kilobytes: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const { trim, bleed } = BENCH_CARD;
  const size = { w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
  const noise = noiseFrom(7);
  for (let n = 0; n < pages; n++) {
    const page = pdf.addPage([size.w, size.h]);
    page.setTrimBox(bleed, bleed, trim.w, trim.h);
    placePhotograph(page, Math.max(8, Math.round(Math.sqrt((kilobytes * 1024) / 3))), noise, size);
    for (let i = 0; i < 60; i++) {
      page.drawLine({
        start: { x: i * 2.5, y: bleed },
        end: { x: size.w - i * 2.5, y: size.h - bleed },
        thickness: 0.3,
        color: rgb(0.1, 0.1, 0.3),
      });
    }
    page.drawText(`Card ${n + 1}`, { x: 20, y: 30, size: 18, rotate: degrees(8) });
  }
  return pdf.save();
}

function placePhotograph(
  page: PDFPage,
  side: number,
  noise: () => number,
  size: { w: number; h: number },
): void {
  const pixels = Uint8Array.from({ length: side * side * 3 }, () => noise() * 256);
  const image = page.doc.context.flateStream(pixels, {
    Type: 'XObject',
    Subtype: 'Image',
    Width: side,
    Height: side,
    ColorSpace: 'DeviceRGB',
    BitsPerComponent: 8,
  });
  const ref = page.doc.context.register(image);
  page.node.setXObject(PDFName.of('Photograph'), ref);
  const draw = page.doc.context.flateStream(`q ${size.w} 0 0 ${size.h} 0 0 cm /Photograph Do Q`);
  page.node.addContentStream(page.doc.context.register(draw));
}

/** A plain generator of numbers from 0 to 1, so that art is the same in every run (Lehmer, 1951; modulus 2^31 - 1). */
function noiseFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
