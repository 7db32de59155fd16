#!/usr/bin/env node
// Starts the command line from what was built of it: beside it in a package, else in dist/, built anew when sources changed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const house = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(house, 'dist');

/** Which build is that of the sources as they lay when `seen` was written. */
const current = join(dist, 'cli.json');
const SOURCES = ['build', 'electron', 'shared'];
const FILES = ['package.json', 'package-lock.json'];

await import(pathToFileURL(join(builtFolder(), 'turnlay.mjs')).href);

function builtFolder() {
  const packed = join(dist, 'cli');
  if (!existsSync(join(house, 'build', 'buildCli.ts'))) return packed;
  const seen = glance();
  const known = readKnown();
  if (known?.seen === seen && existsSync(known.folder)) return known.folder;
  const { status, stdout } = spawnSync(
    process.execPath,
    ['--import', 'tsx', join(house, 'build', 'buildCli.ts')],
    { cwd: house, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] },
  );
  if (status !== 0) process.exit(1);
  const folder = stdout.trim();
  writeFileSync(current, JSON.stringify({ seen, folder }));
  return folder;
}

function readKnown() {
  try {
    return JSON.parse(readFileSync(current, 'utf8'));
  } catch {
    return undefined;
  }
}

/** Names, sizes and times of the sources: quicker than reading them, and different whenever one was changed. */
function glance() {
  const hash = createHash('sha256');
  const note = (path) => {
    const { size, mtimeMs } = statSync(path);
    hash.update(`${path} ${size} ${mtimeMs}\n`);
  };
  for (const file of FILES) note(join(house, file));
  for (const folder of SOURCES) {
    for (const entry of readdirSync(join(house, folder), { recursive: true, withFileTypes: true })) {
      if (entry.isFile()) note(join(entry.parentPath, entry.name));
    }
  }
  return hash.digest('hex');
}
