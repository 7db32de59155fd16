// The command `ticket` as a person or a script uses it: a real process, real files.
import { execFile } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeJob } from '../../../shared/job/jobFile.ts';
import { writeLibrary } from '../../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import { dropFolder, newFolder } from '../../kit/hostRig.ts';
import { CARDS, jobOf } from '../../kit/ticketJobs.ts';

const HOUSE = join(import.meta.dirname, '../../..');
let folder: string;
const at = (...names: readonly string[]) => join(folder, ...names);

function ticket(...args: readonly string[]): Promise<{ code: number; out: string; said: string }> {
  return new Promise((resolve) => {
    execFile('npm', ['run', '-s', 'turnlay', '--', 'ticket', ...args], { cwd: HOUSE }, (error, out, said) =>
      resolve({ code: error === null ? 0 : Number(error.code), out, said }),
    );
  });
}

beforeAll(() => {
  folder = newFolder();
  writeFileSync(at('cards.turnlay'), writeJob(jobOf(CARDS)));
  writeFileSync(at('library.json'), writeLibrary(startingLibrary()));
});
afterAll(() => dropFolder(folder));

describe('ticket', () => {
  it('writes the papers of a job for the paper that is named, and answers with their files', async () => {
    const options = ['--to', at('papers'), '--library', at('library.json'), '--json'];
    const done = await ticket(at('cards.turnlay'), ...options, '--paper', 'uncoated card');
    const answer = JSON.parse(done.out);
    expect([done.code, answer.notices]).toEqual([0, []]);
    expect(answer.files.map((f: { part: string }) => f.part)).toEqual([
      'run-sheet',
      'dummy',
      'cutting-order',
      'ticket',
      'placements',
      'cuts',
    ]);
    for (const { file } of answer.files) expect(existsSync(file)).toBe(true);
  });

  it('tells of the paper that the job was planned on, where none is named', async () => {
    const job = jobOf(CARDS);
    const plan = { printer: 'Any', feed: 'Tray', paper: 'Uncoated card', lies: 'either' } as const;
    writeFileSync(at('planned.turnlay'), writeJob({ ...job, brief: { ...job.brief, plan } }));
    const options = ['--to', at('planned'), '--library', at('library.json'), '--json'];
    const done = await ticket(at('planned.turnlay'), ...options);
    const { files } = JSON.parse(done.out) as { readonly files: readonly { part: string; file: string }[] };
    const ticketFile = files.find(({ part }) => part === 'ticket')?.file ?? '';
    expect(readFileSync(ticketFile, 'utf8')).toContain('DescriptiveName="Uncoated card"');
  });

  it('refuses a paper that the library does not have, and writes nothing', async () => {
    const options = ['--to', at('none'), '--library', at('library.json'), '--paper', 'vellum'];
    const refused = await ticket(at('cards.turnlay'), ...options);
    expect([refused.code, refused.out]).toEqual([1, '']);
    expect(refused.said).toMatch(/^The library has no paper called "vellum"\.\nTake one of these: /);
    expect(existsSync(at('none'))).toBe(false);
  });
});
