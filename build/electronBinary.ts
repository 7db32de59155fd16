// Where Electron's binary is on this machine, if it is there: the package itself would try to fetch it.
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** The folder of the package `electron`, or `undefined` where it is not installed. */
export function electronPackage(house: string): string | undefined {
  try {
    return dirname(createRequire(join(house, 'package.json')).resolve('electron/package.json'));
  } catch {
    return undefined;
  }
}

/** The folder with Electron's binary and everything that belongs to it, or `undefined`. */
export function electronDist(house: string): string | undefined {
  const binary = electronBinary(house);
  return binary === undefined ? undefined : distOf(electronPackage(house) ?? '');
}

/** The path of the binary, or `undefined`. The package notes its name last, so a half unpacked one does not count. */
export function electronBinary(house: string): string | undefined {
  const folder = electronPackage(house);
  if (folder === undefined) return undefined;
  const note = join(folder, 'path.txt');
  const isNoted = existsSync(note);
  if (!isNoted && process.env.ELECTRON_OVERRIDE_DIST_PATH === undefined) return undefined;
  const binary = join(distOf(folder), isNoted ? readFileSync(note, 'utf8').trim() : executableOf());
  return existsSync(binary) ? binary : undefined;
}

/** The name of the binary within Electron's folder, as Electron publishes it for each system. */
export function executableOf(platform = process.platform): string {
  if (platform === 'darwin') return 'Electron.app/Contents/MacOS/Electron';
  return platform === 'win32' ? 'electron.exe' : 'electron';
}

const distOf = (folder: string) => process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, 'dist');
