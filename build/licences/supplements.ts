// What packages do not say themselves: licences without their text, and what others' programs hold within.

/** Where a text stands: in `texts/` beside this file, or in a package. */
type TextAt = { readonly own: string } | { readonly package: string; readonly file: string };

/** Somebody's work within a file of a package. */
export interface Within {
  readonly name: string;
  /** As SPDX names it. */
  readonly licence: string;
  readonly text: TextAt;
}

/** A package whose licence is declared, and whose text or proper name is elsewhere. */
export interface Supplement {
  readonly licence?: string;
  readonly holder?: string;
  readonly text?: TextAt;
}

const MIT: TextAt = { own: 'mit.txt' };
const APACHE: TextAt = { own: 'apache-2.0.txt' };
const ZLIB: Within = { name: 'zlib', licence: 'Zlib', text: { own: 'zlib.txt' } };
const JPEG: Within = {
  name: 'libjpeg-turbo',
  licence: 'IJG AND BSD-3-Clause',
  text: { own: 'libjpeg-turbo.txt' },
};

/** By the name of the package. The holders are the authors that each package or its sources name. */
export const SUPPLEMENTS: Readonly<Record<string, Supplement>> = {
  '@neslinesli93/qpdf-wasm': { holder: 'neslinesli93', text: { own: 'isc.txt' } },
  // Its decoder is Google's, as the head of each file of it says.
  brotli: {
    licence: 'MIT AND Apache-2.0',
    holder: 'Devon Govett; Copyright 2013 Google Inc. (the decoder)',
    text: { own: 'brotli.txt' },
  },
  dfa: { holder: 'Devon Govett', text: MIT },
  'dejavu-fonts-ttf': { licence: 'Bitstream-Vera' },
};

/**
 * By the name of the file. Every program in WebAssembly that ships is here, or has the licences of what it holds beside it.
 *
 * @source what the builds of PDFium, of qpdf and of HiGHS link; from memory, but for what the files themselves name.
 */
export const WITHIN: Readonly<Record<string, readonly Within[]>> = {
  'pdfium.wasm': [
    {
      name: 'PDFium',
      licence: 'BSD-3-Clause AND Apache-2.0',
      text: { package: 'pdfjs-dist', file: 'wasm/LICENSE_JBIG2' },
    },
    { name: 'Anti-Grain Geometry', licence: 'LicenseRef-AGG-2.3', text: { own: 'agg.txt' } },
    { name: 'FreeType', licence: 'FTL', text: { own: 'freetype.txt' } },
    { name: 'Little CMS', licence: 'MIT', text: { own: 'little-cms.txt' } },
    {
      name: 'OpenJPEG',
      licence: 'BSD-2-Clause',
      text: { package: 'pdfjs-dist', file: 'wasm/LICENSE_OPENJPEG' },
    },
    JPEG,
    ZLIB,
  ],
  'qpdf.wasm': [{ name: 'qpdf', licence: 'Apache-2.0', text: APACHE }, JPEG, ZLIB],
  // The licence of its package is that of HiGHS too; the sorting within is under the licence of zlib.
  'highs.wasm': [],
};
