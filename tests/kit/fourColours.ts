// Art whose every quarter has a colour of its own, made into sheets by the real form maker.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { PDFDocument, rgb } from 'pdf-lib';
import { ok } from '../../shared/fault/result.ts';
import type { Size } from '../../shared/geometry/space.ts';
import { openArt } from '../../shared/pdf/art/openArt.ts';
import { createFormMaker } from '../../shared/pdf/form/formMaker.ts';
import { openSheetFont } from '../../shared/pdf/sheet/sheetFont.ts';
import type { FaceSource } from '../../shared/pdf/sheet/writeSheets.ts';

/** The quarters of a face, as one looks at it with its head up. */
export type Quarter = 'upper left' | 'upper right' | 'lower left' | 'lower right';

type Colour = readonly [number, number, number];

/** The colours of the quarters of the front and of the back, red, green and blue from 0 to 255. */
export const FACE_COLOURS: Readonly<Record<'front' | 'back', Readonly<Record<Quarter, Colour>>>> = {
  front: {
    'upper left': [255, 0, 0],
    'upper right': [0, 255, 0],
    'lower left': [0, 0, 255],
    'lower right': [255, 255, 0],
  },
  back: {
    'upper left': [0, 255, 255],
    'upper right': [255, 0, 255],
    'lower left': [128, 0, 0],
    'lower right': [0, 128, 0],
  },
};

/** A two-page PDF, front and back, each page the trim with its bleed all round, in pt. */
export async function drawFourColours(trim: Size, bleed: number): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  for (const face of ['front', 'back'] as const) {
    const w = trim.w + 2 * bleed;
    const h = trim.h + 2 * bleed;
    const page = document.addPage([w, h]);
    page.setTrimBox(bleed, bleed, trim.w, trim.h);
    for (const [quarter, colour] of Object.entries(FACE_COLOURS[face])) {
      const [r, g, b] = colour.map((c) => c / 255) as [number, number, number];
      page.drawRectangle({
        x: quarter.endsWith('left') ? 0 : w / 2,
        y: quarter.startsWith('lower') ? 0 : h / 2,
        width: w / 2,
        height: h / 2,
        color: rgb(r, g, b),
      });
    }
  }
  return document.save();
}

/** The faces of this art for every piece, whatever its name. */
export async function facesOf(
  bytes: Uint8Array,
  trim: Size,
  bleed: number,
): Promise<(target: PDFDocument) => FaceSource> {
  const art = await openArt(bytes);
  if (!art.ok) throw new Error(art.fault.message);
  const box = { x: 0, y: 0, w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
  return (target) => {
    const maker = createFormMaker(target);
    return {
      faceOf: (_piece, face) => {
        const form = maker.formOf(art.value, face === 'front' ? 1 : 2, 0, box);
        if (!form.ok) return form;
        return ok({ form: form.value, bleed: { left: bleed, right: bleed, top: bleed, bottom: bleed } });
      },
      finish: () => maker.finish(),
    };
  };
}

/** The face that the marks are set in. */
export const sheetFont = openSheetFont(
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'))),
);
