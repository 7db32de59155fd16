// Writes the licences of others into what is built: one text that lies beside the program, and the same for the window.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { collectLicences, type Licensed } from './collect.ts';
import type { ShippedFiles } from './shippedFiles.ts';

export const LICENCES_FILE = 'THIRD-PARTY-LICENCES.txt';

const HEAD = `Turnlay holds work of others, under the licences that follow.
The desktop program also holds Electron and Chromium, whose licences lie beside it: LICENSE.electron.txt and
LICENSES.chromium.html.
`;
const RULE = '-'.repeat(78);

export async function writeLicences(shipped: ShippedFiles, app: string): Promise<void> {
  const all = await writeLicencesText(shipped, app);
  await mkdir(join(app, 'renderer'), { recursive: true });
  await writeFile(join(app, 'renderer/licences.json'), JSON.stringify(all));
}

/** The text alone. */
export async function writeLicencesText(shipped: ShippedFiles, folder: string): Promise<readonly Licensed[]> {
  const all = collectLicences(shipped);
  await writeFile(join(folder, LICENCES_FILE), [HEAD, ...all.map(section)].join('\n'));
  return all;
}

function section({ name, version, licence, text }: Licensed): string {
  return `${RULE}\n${name} ${version} (${licence})\n${RULE}\n\n${text.trim()}\n`;
}
