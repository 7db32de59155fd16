// `turnlay plan` as a person or a script uses it: real processes, real files, the ink of real art.
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { plan } from '../../../electron/cli/planCommand.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';
import { writtenLibrary } from '../../kit/libraries.ts';
import { drawOddCard } from '../../kit/oddArt.ts';

const HOUSE = join(import.meta.dirname, '../../..');

function turnlayPlan(...args: readonly string[]): Promise<{ code: number; out: string; said: string }> {
  return new Promise((resolve) => {
    execFile(
      'npm',
      ['run', '-s', 'turnlay', '--', 'plan', ...args],
      { cwd: HOUSE, maxBuffer: 64e6 },
      (error, out, said) => resolve({ code: error === null ? 0 : Number(error.code), out, said }),
    );
  });
}

let folder: string;
const at = (...names: readonly string[]) => join(folder, ...names);
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'turnlay-plan-'));
  await writeFile(at('supper.pdf'), await drawOddCard('Supper', { w: 360, h: 504 }, 9));
  await writeFile(at('brief.json'), JSON.stringify(supperBrief));
  await writeFile(at('library.json'), JSON.stringify(writtenLibrary()));
});
afterAll(() => rm(folder, { recursive: true }));

describe('plan', () => {
  it('tells all parts of the cost in JSON, and the reasons against the rest', async () => {
    const options = { library: at('library.json'), coverage: '1.5', by: 'cost', json: true };
    const out = await saidBy(() => plan(at('brief.json'), options));
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({ title: 'Harvest supper', currency: '$', rankedBy: 'cost' });
    // The example that is worked out by hand with the tests of the plan itself.
    const one = answer.candidates.find(
      (candidate: { work: string; lies: string }) =>
        candidate.work === 'work-and-turn' && candidate.lies === 'either',
    );
    expect(one).toMatchObject({
      printer: 'Tray printer',
      feed: 'Tray',
      quality: 'Usual',
      paper: 'Card',
      sheet: { width: 792, height: 1224, lead: 'short', grain: 'along-feed' },
      source: { is: 'sheet' },
      turn: 'side-to-side',
      up: 4,
      count: { needed: 30, overs: 3, makeReady: 2, sheets: 35, bought: 35 },
      cost: { paper: 7, ink: 42.97, labour: 3.85, makeReady: 3, trimming: 1.6, wear: 1.4, total: 59.82 },
      spread: { low: 38.34, high: 81.31 },
    });
    expect(answer.refused).toEqual([
      {
        printer: 'Tray printer',
        feed: 'Tray',
        paper: null,
        sheet: null,
        works: [
          { work: 'perfecting', turn: 'side-to-side' },
          { work: 'perfecting', turn: 'end-to-end' },
        ],
        code: 'plan-impossible',
        reason: 'Tray of Tray printer does not turn the sheet itself.',
        remedy: 'Turn the sheets by hand: take work-and-back or one form for both sides.',
      },
    ]);
  });

  it('measures the ink of the art, and says in words what is best', async () => {
    const { code, out, said } = await turnlayPlan(
      at('brief.json'),
      '--library',
      at('library.json'),
      '--by',
      'time',
    );
    expect(code).toBe(0);
    expect(said).toContain('Measuring how much ink the art takes');
    expect(out).toMatch(/^Harvest supper: \d+ ways to print 120 pieces\.$/m);
    expect(out).toMatch(
      /^1\. \$ \d+\.\d\d \(\$ \d+\.\d\d to \$ \d+\.\d\d\), \$ 0\.\d{3} a piece, beaten by none$/m,
    );
    expect(out).toContain('4 up, 35 sheets: 30 needed, 3 overs, 2 to set up');
    expect(out).toMatch(
      /paper \$ 7\.00, ink \$ \d+\.\d\d, labour \$ 3\.85, setting up \$ 3\.00, cutting \$ 1\.60, wear \$ 1\.40/,
    );
  });

  it('refuses what it cannot use, with what to do', async () => {
    const library = at('library.json');
    await writeFile(at('bad.json'), JSON.stringify(writtenLibrary({ currency: 3 })));
    expect(await refused('brief.json', { library: at('bad.json') })).toEqual({
      code: 'library-invalid',
      message: 'The library cannot be used. currency: must be a text.',
      remedy: 'Correct this field in the library and try again.',
    });
    for (const coverage of ['4.1', '-1', 'much', '']) {
      expect(await refused('brief.json', { library, coverage })).toMatchObject({
        code: 'plan-impossible',
        message: `"${coverage}" is not a coverage.`,
      });
    }
    expect(await refused('brief.json', { library, by: 'luck' })).toMatchObject({
      message: 'Candidates are not ranked by luck.',
      remedy: 'Rank them by cost, time or waste.',
    });
    await writeFile(at('artless.json'), JSON.stringify(supperWith({}, { front: { file: 'gone.pdf' } })));
    const artless = await refused('artless.json', { library });
    expect(artless).toMatchObject({ code: 'art-missing' });
    expect(artless.remedy).toContain('To plan without the art, say what it covers: --coverage 1.');
    expect(await refused('missing.json', { library })).toMatchObject({ code: 'file-missing' });
  });

  it('says so when nothing in the library can print the job', async () => {
    await writeFile(at('empty.json'), JSON.stringify(writtenLibrary({ papers: [] })));
    const options = { library: at('empty.json'), coverage: '4', by: 'waste', json: false };
    const told = await saidBy(() => plan(at('brief.json'), options));
    expect(told.split('\n')).toEqual([
      'Harvest supper: nothing in the library can print it.',
      'Not on Tray printer: Tray of Tray printer does not turn the sheet itself.',
      '',
    ]);
  });
});

/** What a command writes on standard output, in this very process. */
async function saidBy(command: () => Promise<void>): Promise<string> {
  const written: string[] = [];
  const spy = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    written.push(String(text));
    return true;
  });
  await command();
  spy.mockRestore();
  return written.join('');
}

async function refused(brief: string, options: { library: string; coverage?: string; by?: string }) {
  const told = await saidBy(() => plan(at(brief), { by: 'cost', json: true, ...options }));
  expect(process.exitCode).toBe(1);
  process.exitCode = 0;
  return JSON.parse(told).error;
}
