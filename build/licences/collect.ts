// The licences of everything by others that ships: which packages the files belong to, and what each says.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join, sep } from 'node:path';
import { mayShip } from './judge.ts';
import { SUPPLEMENTS, WITHIN, type Within } from './supplements.ts';

export interface Licensed {
  readonly name: string;
  readonly version: string;
  /** As SPDX names it. */
  readonly licence: string;
  readonly text: string;
}

interface Package {
  readonly folder: string;
  readonly name: string;
  readonly version: string;
  readonly license?: unknown;
}

const IS_LICENCE = /^(licen[cs]e|copying|notice|copyright)/i;

/**
 * Everything by others among these files, by name. Throws where a package has no licence, no text of it, or one that may
 * not ship, and where nobody has noted what a program in WebAssembly holds.
 */
export function collectLicences(files: Iterable<string>): readonly Licensed[] {
  const byPackage = new Map<string, { found: Package; files: string[] }>();
  for (const file of files) {
    if (!file.includes(`${sep}node_modules${sep}`)) continue;
    const found = packageOf(file);
    const at = byPackage.get(found.folder) ?? { found, files: [] };
    at.files.push(file);
    byPackage.set(found.folder, at);
  }
  const all = [...byPackage.values()].flatMap((at) => licencesOf(at.found, at.files));
  return all.toSorted(
    (a, b) => a.name.localeCompare(b.name, 'en') || a.version.localeCompare(b.version, 'en'),
  );
}

/** The package that a file belongs to: the nearest folder that says a name and a version. */
function packageOf(file: string): Package {
  for (let folder = dirname(file); folder !== dirname(folder); folder = dirname(folder)) {
    if (!existsSync(join(folder, 'package.json'))) continue;
    const told = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    if (told.name !== undefined && told.version !== undefined) return { ...told, folder };
  }
  throw new Error(`${file} belongs to no package`);
}

function licencesOf(found: Package, files: readonly string[]): readonly Licensed[] {
  const { name, version, folder } = found;
  const supplement = SUPPLEMENTS[name];
  const licence = supplement?.licence ?? found.license;
  if (typeof licence !== 'string') throw new Error(`${name} ${version} ships and names no licence`);
  const texts = textsOf(folder, files);
  if (supplement?.text !== undefined)
    texts.push(`Copyright ${supplement.holder}\n\n${textAt(supplement.text)}`);
  if (texts.length === 0) throw new Error(`${name} ${version} ships without the text of its licence`);
  const own: Licensed = { name, version, licence, text: texts.join('\n') };
  const held = files.flatMap((file) => heldIn(file)).map((within) => withinAs(within, own));
  for (const one of [own, ...held]) {
    if (!mayShip(one.licence)) throw new Error(`${one.name} may not ship under its licence, ${one.licence}`);
  }
  return [own, ...held];
}

/** The texts that stand at the root of a package and beside each of its files. */
function textsOf(root: string, files: readonly string[]): string[] {
  const folders = [...new Set([root, ...files.map(dirname)])];
  return folders.flatMap((folder) =>
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isFile() && IS_LICENCE.test(entry.name))
      .map((entry) => readFileSync(join(folder, entry.name), 'utf8')),
  );
}

function heldIn(file: string): readonly Within[] {
  if (!file.endsWith('.wasm')) return [];
  const noted = WITHIN[basename(file)];
  const isTold = readdirSync(dirname(file)).some((name) => IS_LICENCE.test(name));
  if (noted === undefined && !isTold) throw new Error(`Nobody has noted what ${basename(file)} holds`);
  return noted ?? [];
}

function withinAs({ name, licence, text }: Within, holder: Licensed): Licensed {
  return { name, version: `in ${holder.name} ${holder.version}`, licence, text: textAt(text) };
}

function textAt(at: Within['text']): string {
  const path =
    'own' in at
      ? join(import.meta.dirname, 'texts', at.own)
      : join(dirname(createRequire(import.meta.url).resolve(`${at.package}/package.json`)), at.file);
  return readFileSync(path, 'utf8');
}
