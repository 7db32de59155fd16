// Art whose pages lie in every way a page can: turned by Rotate, in another unit, off the origin, with a crop box.
import { PDFDocument, PDFName, PDFNumber } from 'pdf-lib';

/** As viewed: 5 x 7 in with 1/8 in bleed, in pt. */
const [W, H, BLEED] = [378, 522, 9] as const;

export interface PageLie {
  readonly rotate: 0 | 90 | 180 | 270;
  readonly unit: number;
  readonly origin: readonly [number, number];
  readonly cropped: boolean;
}

/**
 * Each page shows, as viewed, yellow paper with a red block of 120 x 60 pt in the upper left of the trim and a blue one
 * of 60 x 60 pt in its lower left.
 */
export async function drawTurnedPages(lies: readonly PageLie[]): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  for (const { rotate, unit, origin, cropped } of lies) {
    const [w, h] = rotate % 180 === 0 ? [W, H] : [H, W];
    const page = pdf.addPage([w / unit, h / unit]);
    const [x, y] = origin;
    const box = (by: number) =>
      pdf.context.obj([x + by / unit, y + by / unit, x + (w - by) / unit, y + (h - by) / unit]);
    page.node.set(PDFName.of('MediaBox'), box(0));
    if (cropped) page.node.set(PDFName.of('CropBox'), box(BLEED));
    page.node.set(PDFName.of('Rotate'), PDFNumber.of(rotate));
    page.node.set(PDFName.of('UserUnit'), PDFNumber.of(unit));
    const upright = {
      0: '1 0 0 1 0 0',
      90: `0 1 -1 0 ${H} 0`,
      180: `-1 0 0 -1 ${W} ${H}`,
      270: `0 -1 1 0 0 ${W}`,
    };
    const drawn = [
      `q 1 0 0 1 ${x} ${y} cm ${1 / unit} 0 0 ${1 / unit} 0 0 cm ${upright[rotate]} cm`,
      `1 1 0 rg 0 0 ${W} ${H} re f`,
      `1 0 0 rg ${BLEED} ${H - BLEED - 60} 120 60 re f`,
      `0 0 1 rg ${BLEED} ${BLEED} 60 60 re f Q`,
    ];
    page.node.set(PDFName.of('Contents'), pdf.context.register(pdf.context.stream(drawn.join('\n'))));
  }
  return pdf.save();
}
