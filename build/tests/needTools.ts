// The independent tools that the tests check against: installed where that is possible, else named in one sentence.
import { spawnSync } from 'node:child_process';
import { findBrowser } from '../findBrowser.ts';

/** Each tool, the Debian package that brings it, and what the tests need it for. */
const TOOLS = [
  { command: 'qpdf', debian: ['qpdf'], usedFor: 'reading written PDFs back' },
  { command: 'pdftoppm', debian: ['poppler-utils'], usedFor: 'rendering written PDFs' },
] as const;

const isThere = (command: string) => spawnSync('sh', ['-c', `command -v ${command}`]).status === 0;

function lacking(): { readonly name: string; readonly debian: readonly string[] }[] {
  const tools = TOOLS.filter((t) => !isThere(t.command)).map((t) => ({
    name: `${t.command} (${t.usedFor})`,
    debian: t.debian,
  }));
  if (findBrowser() !== undefined) return tools;
  return [
    ...tools,
    { name: 'a Chromium browser (trying the window)', debian: ['chromium', 'fonts-liberation'] },
  ];
}

const missing = lacking();
const canInstall = process.getuid?.() === 0 && isThere('apt-get');
if (missing.length > 0 && canInstall) {
  console.log(`Installing ${missing.map((m) => m.name).join(', ')}`);
  const packages = missing.flatMap((m) => m.debian);
  const run = (...args: string[]) =>
    spawnSync('apt-get', args, {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  run('update', '-qq');
  run('install', '-y', '-qq', '--no-install-recommends', ...packages);
}
const still = lacking();
if (still.length > 0) {
  console.error(
    `The tests need ${still.map((m) => m.name).join(' and ')}. Install ${still.length === 1 ? 'it' : 'them'} (Debian: apt-get install ${still.flatMap((m) => m.debian).join(' ')}) and try again.`,
  );
  process.exitCode = 1;
}
