// What dead programs left unfinished goes; what living ones and other machines are at stays.
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { clearUnfinished, unfinishedName } from '../../../electron/disk/unfinished.ts';
import { deadProgram } from '../../kit/deadProgram.ts';
import { testFolder } from '../../kit/folder.ts';

const folder = testFolder();

it('clears what a dead program of this machine left', async () => {
  const at = join(folder.path, 'mixed');
  mkdirSync(at);
  const own = unfinishedName();
  const [, machine = ''] = /^\.turnlay-(\w+)-/.exec(own) ?? [];
  const dead = deadProgram();
  const left = `.turnlay-${machine}-${dead}-01234567.part`;
  const elsewhere = `.turnlay-00000000-${dead}-01234567.part`;
  for (const name of [own, left, elsewhere, 'card.part', 'job.turnlay']) writeFileSync(join(at, name), '');
  await clearUnfinished(at);
  expect(readdirSync(at).toSorted()).toEqual([own, elsewhere, 'card.part', 'job.turnlay'].toSorted());
});

it('asks nothing of a folder that is not there', async () => {
  await expect(clearUnfinished(join(folder.path, 'missing'))).resolves.toBeUndefined();
});
