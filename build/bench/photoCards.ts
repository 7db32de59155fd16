// Art for benchmarks of pictures: a card whose two faces are photographs that do not compress.
import { PDFDocument, PDFName } from 'pdf-lib';
import { noiseFrom } from './noise.ts';

/** The card, in pt. */
export const PHOTO_CARD = { trim: { w: 360, h: 504 }, bleed: 9 } as const;

/** A PDF of two pages and about this many bytes. Another seed gives another photograph. */
export async function drawPhotoCard(bytes: number, seed: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const noise = noiseFrom(seed);
  const { trim, bleed } = PHOTO_CARD;
  const side = Math.floor(Math.sqrt(bytes / 2 / 3));
  for (let n = 0; n < 2; n++) {
    const page = pdf.addPage([trim.w + 2 * bleed, trim.h + 2 * bleed]);
    page.setTrimBox(bleed, bleed, trim.w, trim.h);
    const colours = new Uint8Array(side * side * 3);
    // More red than anything else, so that it is told from paper and lines at any size.
    for (let i = 0; i < colours.length; i++) colours[i] = noise() * 120 + (i % 3 === 0 ? 135 : 0);
    const photo = pdf.context.stream(colours, {
      Type: 'XObject',
      Subtype: 'Image',
      Width: side,
      Height: side,
      ColorSpace: 'DeviceRGB',
      BitsPerComponent: 8,
    });
    page.node.setXObject(PDFName.of('Photo'), pdf.context.register(photo));
    const draw = `q ${page.getWidth()} 0 0 ${page.getHeight()} 0 0 cm /Photo Do Q`;
    page.node.addContentStream(pdf.context.register(pdf.context.stream(draw)));
  }
  return pdf.save({ useObjectStreams: false });
}
