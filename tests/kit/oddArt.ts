// Art that looks the same to its viewer however its page is written: odd origins, Rotate, UserUnit.
import { concatTransformationMatrix, PDFDocument, PDFName, PDFNumber, rgb, StandardFonts } from 'pdf-lib';

/** How the page of a card is written. */
export interface Oddness {
  /** Clockwise, as in the page's Rotate. */
  readonly rotate: 0 | 90 | 180 | 270;
  readonly userUnit: number;
  /** The lower left of the media box, in the page's own units. */
  readonly origin: readonly [number, number];
}

export const PLAIN: Oddness = { rotate: 0, userUnit: 1, origin: [0, 0] };

const GROUNDS = { front: rgb(0.82, 0.9, 0.98), back: rgb(0.99, 0.93, 0.8) } as const;

/** A card of two pages, front and back, each unlike itself when turned or mirrored. Trim and bleed in pt. */
export async function drawOddCard(
  name: string,
  trim: { readonly w: number; readonly h: number },
  bleed: number,
  oddness: Oddness = PLAIN,
): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const font = await pdf.embedFont(StandardFonts.HelveticaBold);
  const view = { w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
  const { rotate, userUnit: unit, origin } = oddness;
  const [w, h] = rotate % 180 === 0 ? [view.w / unit, view.h / unit] : [view.h / unit, view.w / unit];
  const [ox, oy] = origin;
  for (const face of ['front', 'back'] as const) {
    const page = pdf.addPage([w, h]);
    page.setMediaBox(ox, oy, w, h);
    page.node.set(PDFName.of('Rotate'), PDFNumber.of(rotate));
    if (unit !== 1) page.node.set(PDFName.of('UserUnit'), PDFNumber.of(unit));
    const k = 1 / unit;
    const toUser = {
      0: [k, 0, 0, k, ox, oy],
      90: [0, k, -k, 0, ox + w, oy],
      180: [-k, 0, 0, -k, ox + w, oy + h],
      270: [0, -k, k, 0, ox, oy + h],
    } as const;
    const [a, b, c, d, e, f] = toUser[rotate];
    page.pushOperators(concatTransformationMatrix(a, b, c, d, e, f));
    page.drawRectangle({ x: 0, y: 0, width: view.w, height: view.h, color: GROUNDS[face] });
    page.drawRectangle({
      x: 0,
      y: view.h * 0.8,
      width: view.w * 0.7,
      height: view.h * 0.2,
      color: rgb(0.7, 0.2, 0.2),
    });
    page.drawRectangle({
      x: view.w * 0.85,
      y: 0,
      width: view.w * 0.15,
      height: view.h * 0.45,
      color: rgb(0.1, 0.4, 0.3),
    });
    page.drawText(name, { x: bleed + 6, y: view.h * 0.6, size: 15, font });
    page.drawText(face, { x: bleed + 6, y: view.h * 0.6 - 22, size: 18, font });
  }
  return pdf.save();
}
