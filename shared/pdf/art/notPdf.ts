// Telling a PDF from the other things people send, by how a file begins.
import type { Fault } from '../../fault/result.ts';

/** The header may stand this far into the file. @source ISO 32000-1, Annex H.3, note 13. */
const HEADER_SEARCH_BYTES = 1024;

/** How other files begin: the bytes, and what such a file is called. */
const BEGINNINGS: readonly (readonly [beginning: string, is: string])[] = [
  ['\xff\xd8\xff', 'a JPEG picture'],
  ['\x89PNG', 'a PNG picture'],
  ['GIF8', 'a GIF picture'],
  ['II*\x00', 'a TIFF picture'],
  ['MM\x00*', 'a TIFF picture'],
  ['8BPS', 'a layered picture'],
  ['RIFF', 'a picture, a sound or a film'],
  ['%!PS', 'PostScript'],
  ['\xc5\xd0\xd3\xc6', 'PostScript with a preview'],
  ['\x06\x06\xed\xf5', 'a layout document'],
  ['PK\x03\x04', 'an office document or a ZIP archive'],
  ['\xd0\xcf\x11\xe0', 'an office document'],
  ['{\\rtf', 'a word processor document'],
  ['<svg', 'an SVG drawing'],
  ['<?xml', 'an XML file'],
  ['<!DOCTYPE', 'a web page'],
  ['<html', 'a web page'],
];

/** The refusal of a file that does not begin as a PDF, or `undefined` for one that does. */
export function refuseOther(bytes: Uint8Array, art: string): Fault | undefined {
  const beginning = String.fromCharCode(...bytes.subarray(0, HEADER_SEARCH_BYTES));
  if (beginning.includes('%PDF-')) return undefined;
  const known = BEGINNINGS.find(([start]) => beginning.startsWith(start))?.[1];
  const is = bytes.length === 0 ? 'empty' : known;
  return {
    code: 'art-not-pdf',
    message: is === undefined ? `${art} is not a PDF.` : `${art} is not a PDF: it is ${is}.`,
    remedy: 'Export it as PDF from the program that made it, at its true size with bleed.',
    where: art,
  };
}
