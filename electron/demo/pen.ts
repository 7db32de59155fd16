// The pen that the demo art is drawn with: process colours, centred lines of type, ears of wheat and leaves.
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import fontkit from '@cantoo/fontkit';
import { type Color, cmyk, degrees, PDFDocument, type PDFFont, type PDFPage } from 'pdf-lib';

/** The process colours of the demo, in fractions of cyan, magenta, yellow and black. */
export const INKS = {
  forest: cmyk(0.78, 0.38, 0.72, 0.42),
  moss: cmyk(0.55, 0.22, 0.68, 0.12),
  straw: cmyk(0.06, 0.22, 0.72, 0.02),
  cream: cmyk(0.02, 0.04, 0.16, 0),
  rust: cmyk(0.18, 0.72, 0.88, 0.08),
  ink: cmyk(0.3, 0.3, 0.3, 0.92),
} as const satisfies Readonly<Record<string, Color>>;

/** A document to draw in, with the two faces of type of the demo. */
export interface Sketchbook {
  readonly pdf: PDFDocument;
  readonly roman: PDFFont;
  readonly bold: PDFFont;
}

export async function openSketchbook(title: string, drawnOn: Date): Promise<Sketchbook> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit);
  pdf.setTitle(title);
  pdf.setCreator('Turnlay demo');
  pdf.setProducer('Turnlay demo');
  pdf.setCreationDate(drawnOn);
  const face = async (name: string) => {
    const file = fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
    return pdf.embedFont(await readFile(file), { subset: true });
  };
  return { pdf, roman: await face('DejaVuSerif'), bold: await face('DejaVuSerif-Bold') };
}

/** A page of this trim (pt) with bleed on every side; its trim and bleed boxes say so, and y runs from the trim. */
export function addCard(book: Sketchbook, trim: { w: number; h: number }, bleed: number): PDFPage {
  const page = book.pdf.addPage([trim.w + 2 * bleed, trim.h + 2 * bleed]);
  page.setTrimBox(bleed, bleed, trim.w, trim.h);
  page.setBleedBox(0, 0, trim.w + 2 * bleed, trim.h + 2 * bleed);
  page.translateContent(bleed, bleed);
  return page;
}

/** Colour over the whole card, bleed included. */
export function flood(page: PDFPage, bleed: number, color: Color): void {
  const { width, height } = page.getSize();
  page.drawRectangle({ x: -bleed, y: -bleed, width, height, color });
}

/** A line of type centred on x, its baseline on y, set wider by `tracking` pt a letter. */
export function centredLine(
  page: PDFPage,
  text: string,
  at: {
    readonly x: number;
    readonly y: number;
    readonly size: number;
    readonly font: PDFFont;
    readonly color: Color;
    readonly tracking?: number;
  },
): void {
  const tracking = at.tracking ?? 0;
  const letters = [...text];
  const widths = letters.map((letter) => at.font.widthOfTextAtSize(letter, at.size));
  const whole = widths.reduce((sum, w) => sum + w, 0) + tracking * (letters.length - 1);
  let x = at.x - whole / 2;
  letters.forEach((letter, i) => {
    page.drawText(letter, { x, y: at.y, size: at.size, font: at.font, color: at.color });
    x += (widths[i] ?? 0) + tracking;
  });
}

/** An ear of wheat growing from (x, y), leaning by `lean` degrees counter-clockwise, `length` pt long. */
export function wheatEar(
  page: PDFPage,
  x: number,
  y: number,
  length: number,
  lean: number,
  color: Color,
): void {
  const k = length / 100;
  const grain = 'M 0 0 C 5 -4 7 -13 2 -21 C -3 -14 -4 -6 0 0 Z';
  const along = (distance: number) => {
    const a = ((lean + 90) * Math.PI) / 180;
    return { x: x + Math.cos(a) * distance, y: y + Math.sin(a) * distance };
  };
  const tip = along(length * 0.9);
  page.drawLine({ start: { x, y }, end: tip, thickness: 1.4 * k, color });
  for (let i = 0; i < 6; i++) {
    const foot = along(length * (0.34 + i * 0.1));
    for (const side of [-1, 1]) {
      page.drawSvgPath(grain, { x: foot.x, y: foot.y, scale: k, rotate: degrees(lean - side * 28), color });
    }
  }
  const last = along(length * 0.9);
  page.drawSvgPath(grain, { x: last.x, y: last.y, scale: k, rotate: degrees(lean), color });
}

/** A leaf from (x, y), `length` pt long, leaning by `lean` degrees counter-clockwise. */
export function leaf(page: PDFPage, x: number, y: number, length: number, lean: number, color: Color): void {
  page.drawSvgPath('M 0 0 C 26 -22 26 -66 0 -100 C -26 -66 -26 -22 0 0 Z', {
    x,
    y,
    scale: length / 100,
    rotate: degrees(lean),
    color,
  });
}
