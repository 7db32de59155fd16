// The face of type that the marks are set in, read once.
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { openSheetFont, type SheetFont } from '../../shared/pdf/sheet/sheetFont.ts';

let opened: Promise<SheetFont> | undefined;

/** The font of the marks. It comes with the program, so failing to read it is our own mistake. */
export function sheetFont(): Promise<SheetFont> {
  opened ??= readFile(fileURLToPath(import.meta.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'))).then(
    (bytes) => openSheetFont(bytes),
  );
  return opened;
}
