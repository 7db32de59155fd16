// Pages whose ink is known by hand: 144 by 108 pt, drawn object by object.
import { type Body, type Objects, pack, writePages } from './pdfs.ts';

/** A page with what it draws, and what it draws with. */
export interface InkedPage {
  readonly drawing: string;
  readonly resources?: string;
  readonly objects?: Objects;
}

export const PAGE = { w: 144, h: 108 };

export function writeInked({ drawing, resources = '', objects = {} }: InkedPage): Uint8Array {
  return writePages([{ media: [0, 0, PAGE.w, PAGE.h], drawing, resources }], { objects });
}

/** A page that one picture fills. */
export function pictured(picture: Body): InkedPage {
  return {
    drawing: 'q 144 0 0 108 0 0 cm /Picture Do Q',
    resources: '/XObject << /Picture 3 0 R >>',
    objects: { 3: picture },
  };
}

/** A picture of 8 bits a part; `space` is its colour space and whatever else it says. */
export function pictureOf(width: number, height: number, samples: readonly number[], space: string): Body {
  return pack(Uint8Array.from(samples), `${head(width, height)} /ColorSpace ${space}`);
}

const head = (width: number, height: number) =>
  `/Type /XObject /Subtype /Image /Width ${width} /Height ${height} /BitsPerComponent 8`;

/** Cyan 255, magenta 64, yellow 1 and black 32 of 255, packed as a JPEG of four inks, turned about as such files are. */
export const INKED_JPEG: Body = {
  dict: `${head(16, 16)} /ColorSpace /DeviceCMYK /Filter /DCTDecode /Decode [1 0 1 0 1 0 1 0]`,
  data: new Uint8Array(
    Buffer.from(
      '/9j/7gAOQWRvYmUAZAAAAAAC/9sAQwADAgIDAgIDAwMDBAMDBAUIBQUEBAUKBwcGCAwKDAwLCgsLDQ4SEA0OEQ4LCxAWEBETFBUVFQwPFxgWFBgSFBUU/9sAQwEDBAQFBAUJBQUJFA0LDRQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQUFBQU/8AAFAgAEAAQBAERAAIRAQMRAQQRAP/EABYAAQEBAAAAAAAAAAAAAAAAAAAGCP/EABQQAQAAAAAAAAAAAAAAAAAAAAD/xAAWAQEBAQAAAAAAAAAAAAAAAAAACAn/xAAUEQEAAAAAAAAAAAAAAAAAAAAA/9oADgQBAAIRAxEEAAA/AJpKjQ1v0AAAB//Z',
      'base64',
    ),
  ),
};

/** A page filled with half of a special ink, whose own replacement is told by a function. */
export function specialInk(tint: string, objects: Objects = {}): InkedPage {
  return {
    drawing: '/Special cs 0.5 scn 0 0 144 108 re f',
    resources: `/ColorSpace << /Special [/Separation /Marigold /DeviceCMYK ${tint}] >>`,
    objects,
  };
}
