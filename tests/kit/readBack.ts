// Written PDFs read back by means that had no part in writing them: qpdf, poppler and PDFium.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFiumLibrary } from '@hyzyla/pdfium';

/** What a tool prints about a PDF; `FILE` among the arguments stands for it. Throws when the tool is not content. */
export function ask(bytes: Uint8Array, tool: string, ...args: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'read-back-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, bytes);
    const given = args.map((a) => (a === 'FILE' ? file : a));
    return execFileSync(tool, given, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A page as a picture. */
export interface PagePicture {
  readonly width: number;
  readonly height: number;
  /** Pixels for each pt. */
  readonly scale: number;
  /** The colour at a point of the page in pt, lower left origin, as `[red, green, blue]`. */
  at(x: number, y: number): readonly [number, number, number];
}

/** The pages of a PDF as PDFium shows them, on white. */
export async function picturesOf(bytes: Uint8Array, scale: number): Promise<readonly PagePicture[]> {
  const library = await PDFiumLibrary.init();
  try {
    const document = await library.loadDocument(bytes);
    const pictures: PagePicture[] = [];
    for (const page of document.pages()) {
      const { data, width, height } = await page.render({ scale, render: 'bitmap' });
      const pixels = Uint8Array.from(data);
      const at = (x: number, y: number): readonly [number, number, number] => {
        const column = Math.min(width - 1, Math.floor(x * scale));
        const row = Math.min(height - 1, Math.floor(height - y * scale));
        const i = (row * width + column) * 4;
        return [pixels[i] ?? 0, pixels[i + 1] ?? 0, pixels[i + 2] ?? 0];
      };
      pictures.push({ width, height, scale, at });
    }
    document.destroy();
    return pictures;
  } finally {
    library.destroy();
  }
}
