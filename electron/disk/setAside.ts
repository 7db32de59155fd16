// Setting a damaged file aside: under a number of its own, so that no earlier one is overwritten.
import { dirname, extname, join } from 'node:path';
import { dropName, giveName, NODE_DISK } from './disk.ts';
import { systemCode } from './systemCode.ts';

/** More damaged files of one name than a person would ever look at. */
const MOST = 1000;

/** Renames `library.json` to `library.damaged-1.json`, or the next number that is free. `undefined` where it cannot. */
export async function setAside(path: string): Promise<string | undefined> {
  const ending = extname(path);
  const stem = path.slice(dirname(path).length + 1, path.length - ending.length);
  for (let number = 1; number <= MOST; number += 1) {
    const name = `${stem}.damaged-${number}${ending}`;
    try {
      await giveName(NODE_DISK, path, join(dirname(path), name));
      await dropName(NODE_DISK, path);
      return name;
    } catch (error) {
      const code = systemCode(error);
      if (code === undefined) throw error;
      if (code !== 'EEXIST') return undefined;
    }
  }
  return undefined;
}
