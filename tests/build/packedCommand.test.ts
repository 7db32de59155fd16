// The command line as a package: packed, unpacked elsewhere without any library beside it, and used there.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { TIME_TO_BUILD } from '../kit/desktopRig.ts';
import { testFolder } from '../kit/folder.ts';
import { CARD, signpost, writePages } from '../kit/pdfs.ts';
import { lockedCard } from '../kit/troubledArt.ts';

const HOUSE = join(import.meta.dirname, '../..');
const folder = testFolder();
const at = (...names: readonly string[]) => join(folder.path, ...names);

beforeAll(() => {
  execFileSync('npm', ['pack', '--silent', '--pack-destination', folder.path], {
    cwd: HOUSE,
    shell: process.platform === 'win32',
  });
  const [packed = ''] = readdirSync(folder.path).filter((name) => name.endsWith('.tgz'));
  execFileSync('tar', ['-xzf', packed], { cwd: folder.path });
  mkdirSync(at('bin'));
  // As npm links a command.
  symlinkSync(at('package/electron/cli/turnlay.mjs'), at('bin/turnlay'));
}, TIME_TO_BUILD);

function turnlay(...args: readonly string[]) {
  return spawnSync(process.execPath, [at('bin/turnlay'), ...args], { cwd: folder.path, encoding: 'utf8' });
}

it('answers what it can do', () => {
  expect(turnlay('--help')).toMatchObject({ status: 0, stderr: '' });
  expect(turnlay('--help').stdout).toContain('Usage: turnlay');
});

it('lays a job out and sends it, proved, to the folder of the RIP', () => {
  const page = { media: CARD, trim: [9, 9, 369, 513], drawing: signpost(CARD) } as const;
  folder.save('supper.pdf', writePages([page, page]));
  folder.save('brief.json', JSON.stringify(SUPPER_BRIEF));
  expect(turnlay('lay', 'brief.json', '--job', 'supper.turnlay')).toMatchObject({ status: 0 });
  mkdirSync(at('rip'));
  const sent = turnlay('send', 'supper.turnlay', '--to', 'rip', '--despite-findings', '--json');
  expect(sent.status).toBe(0);
  expect(readdirSync(at('rip'))).toHaveLength(1);
});

it('says of a locked file that it needs its password', () => {
  writeFileSync(at('supper.pdf'), lockedCard());
  const laid = turnlay('lay', 'brief.json', '--job', 'locked.turnlay');
  expect(laid.status).toBe(1);
  expect(laid.stdout + laid.stderr).toContain('needs a password');
});

it('holds only what it needs: the program, what was built of it, and who made it', () => {
  expect(readdirSync(at('package')).sort()).toEqual([
    'LICENSE',
    'README.md',
    'dist',
    'electron',
    'package.json',
  ]);
  expect(readdirSync(at('package/electron/cli'))).toEqual(['turnlay.mjs']);
  expect(readdirSync(at('package/dist'))).toEqual(['cli']);
});
