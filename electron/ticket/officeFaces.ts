// The faces of type that run sheets and tickets are set in, read once.
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Faces } from '../../shared/pdf/document/writeDocument.ts';
import { openSheetFont, type SheetFont } from '../../shared/pdf/sheet/sheetFont.ts';
import { sheetFont } from '../job/sheetFont.ts';

let strong: Promise<SheetFont> | undefined;

/** The faces of plain pages. They come with the program, so failing to read them is our own mistake. */
export async function officeFaces(): Promise<Faces> {
  strong ??= readFile(fileURLToPath(import.meta.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'))).then(
    (bytes) => openSheetFont(bytes),
  );
  return { plain: await sheetFont(), strong: await strong };
}
