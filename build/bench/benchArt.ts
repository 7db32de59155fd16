// Art for benchmarks: cards with a photograph that does not compress, in strips as flattened transparency leaves it,
// and fine vector work over it.
import { degrees, PDFDocument, PDFName, type PDFPage, rgb } from 'pdf-lib';
import { noiseFrom } from './noise.ts';

/** A card of the benchmarks, in pt. */
export const BENCH_CARD = { trim: { w: 144, h: 90 }, bleed: 9 } as const;

/** A PDF of this many cards, each with a photograph of about `kilobytes` in `strips`. The same numbers, the same bytes. */
export async function drawBenchArt(pages: number, kilobytes: number, strips: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const { trim, bleed } = BENCH_CARD;
  const size = { w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
  const noise = noiseFrom(7);
  for (let n = 0; n < pages; n++) {
    const page = pdf.addPage([size.w, size.h]);
    page.setTrimBox(bleed, bleed, trim.w, trim.h);
    const pixels = Math.max(1, Math.round((kilobytes * 1024) / 3 / strips));
    for (let i = 0; i < strips; i++) placeStrip(page, i, size.h / strips, pixels, noise);
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

/** The strip number `index` of the photograph: one row of so many pixels, across the page and `height` pt high. */
function placeStrip(page: PDFPage, index: number, height: number, pixels: number, noise: () => number): void {
  const { context } = page.doc;
  const colours = Uint8Array.from({ length: pixels * 3 }, () => noise() * 256);
  const image = context.flateStream(colours, {
    Type: 'XObject',
    Subtype: 'Image',
    Width: pixels,
    Height: 1,
    ColorSpace: 'DeviceRGB',
    BitsPerComponent: 8,
  });
  const name = PDFName.of(`Strip${index}`);
  page.node.setXObject(name, context.register(image));
  const draw = `q ${page.getWidth()} 0 0 ${height} 0 ${index * height} cm ${name} Do Q`;
  page.node.addContentStream(context.register(context.flateStream(draw)));
}
