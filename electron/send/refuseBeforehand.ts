// What can be refused before anything is written: names, the folder itself, and files that are there already.
import { join } from 'node:path';
import type { Fault } from '../../shared/fault/result.ts';
import { type Disk, lookUp } from '../disk/disk.ts';
import { systemCode } from '../disk/systemCode.ts';

/** Why these names cannot be sent to this folder, or `undefined`. Throws what the system throws for other reasons. */
export async function refuseBeforehand(
  disk: Disk,
  folder: string,
  names: readonly string[],
  overwrite: boolean,
): Promise<Fault | undefined> {
  return (
    refuseNames(names) ?? (await refuseFolder(disk, folder)) ?? refusePresent(disk, folder, names, overwrite)
  );
}

function refuseNames(names: readonly string[]): Fault | undefined {
  const remedy = 'Change the pattern for the file names.';
  const unusable = names.find((name) => name === '' || name.startsWith('.') || /[/\\\0]/.test(name));
  if (unusable !== undefined) {
    const message = `"${unusable}" cannot be the name of a file in the folder.`;
    return { code: 'name-unusable', message, remedy, where: unusable };
  }
  const folded = names.map((name) => name.normalize('NFC').toLowerCase());
  const twice = names.find((_, i) => folded.indexOf(folded[i] ?? '') !== i);
  if (twice === undefined) return undefined;
  return { code: 'name-unusable', message: `Two files would be called ${twice}.`, remedy, where: twice };
}

async function refuseFolder(disk: Disk, folder: string): Promise<Fault | undefined> {
  const fault = (message: string): Fault => ({
    code: 'folder-missing',
    message,
    remedy: "Choose the RIP's folder anew, or connect the disk it is on.",
    where: folder,
  });
  try {
    const found = await disk.stat(folder);
    return found.isDirectory() ? undefined : fault(`${folder} is a file, not a folder.`);
  } catch (error) {
    const code = systemCode(error);
    if (code === 'ENOENT') return fault(`The folder ${folder} is not there.`);
    if (code === 'ENOTDIR') return fault(`The folder ${folder} cannot be there: part of its path is a file.`);
    throw error;
  }
}

async function refusePresent(
  disk: Disk,
  folder: string,
  names: readonly string[],
  overwrite: boolean,
): Promise<Fault | undefined> {
  const present: string[] = [];
  for (const name of names) {
    const found = await lookUp(disk, join(folder, name));
    if (found === 'folder') {
      return {
        code: 'file-exists',
        message: `${folder} holds a folder called ${name}.`,
        remedy: 'Move it away, or change the pattern for the file names.',
        where: name,
      };
    }
    if (found !== undefined) present.push(name);
  }
  if (overwrite || present.length === 0) return undefined;
  return {
    code: 'file-exists',
    message: `${folder} already holds ${present.join(' and ')}.`,
    remedy: 'Send again with overwriting allowed, or change the pattern for the file names.',
    where: present[0] ?? folder,
  };
}
