// Where Electron's binary is on this machine, if it is there: the package itself would try to fetch it.
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** The path of the binary, or `undefined`. */
export function electronBinary(house: string): string | undefined {
  try {
    const folder = dirname(createRequire(join(house, 'package.json')).resolve('electron/package.json'));
    const dist = process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, 'dist');
    const name = existsSync(join(folder, 'path.txt'))
      ? readFileSync(join(folder, 'path.txt'), 'utf8').trim()
      : 'electron';
    return existsSync(join(dist, name)) ? join(dist, name) : undefined;
  } catch {
    return undefined;
  }
}
