// The gang run at the command line.
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { supperWith } from '../../kit/briefs.ts';

const folder = mkdtempSync(join(tmpdir(), 'turnlay-gang-'));
afterAll(() => rmSync(folder, { recursive: true }));

function gang(...args: readonly string[]): Promise<{ code: number; out: string; said: string }> {
  const program = join(import.meta.dirname, '../../../electron/cli/turnlay.ts');
  return new Promise((resolve) => {
    execFile(process.execPath, ['--import', 'tsx', program, 'gang', ...args], (error, out, said) => {
      resolve({ code: error === null ? 0 : Number(error.code), out, said });
    });
  });
}

/** The published order I001 as cards, four to a sheet. */
const BRIEF = join(folder, 'brief.json');
const written = supperWith({ work: 'work-and-back', turn: 'side-to-side' });
const pieces = [4500, 9000, 16000].map((quantity, i) => ({
  ...written.pieces[0],
  name: `Card ${i + 1}`,
  quantity,
}));
writeFileSync(BRIEF, JSON.stringify({ ...written, pieces }));

describe('turnlay gang', () => {
  it('proposes the forms in words, and says how sure it is of the cost', async () => {
    const ran = await gang(BRIEF, '--sheet-cost', '13.44', '--form-cost', '18676');
    expect(ran.code).toBe(0);
    const lines = ran.out.trimEnd().split('\n');
    expect(lines[0]).toMatch(/: 2 forms, 7375 good sheets, cost 136472\.00, proven the least\.$/);
    expect(lines.slice(1)).toEqual([
      'Form 1: 4500 sheets of Card 1 1 up, Card 2 2 up, Card 3 1 up.',
      'Form 2: 2875 sheets of Card 3 4 up.',
      'Card 1: 4500 for the 4500 wanted, 0 left over.',
      'Card 2: 9000 for the 9000 wanted, 0 left over.',
      'Card 3: 16000 for the 16000 wanted, 0 left over.',
      'What is left over takes 0.00 of the cost of the sheets. Overs for setting up and spoilage come on top.',
    ]);
  });

  it('answers in JSON, refusals too', async () => {
    const ran = await gang(
      BRIEF,
      '--sheet-cost',
      '13.44',
      '--form-cost',
      '18676',
      '--most-forms',
      '1',
      '--json',
    );
    expect(JSON.parse(ran.out)).toMatchObject({ sheets: 9000, gap: 0, forms: [{ sheets: 9000 }] });
    const refused = await gang(BRIEF, '--sheet-cost', 'cheap', '--form-cost', '1', '--json');
    expect(refused.code).toBe(1);
    expect(JSON.parse(refused.out).error).toEqual({
      code: 'gang-impossible',
      message: '"cheap" is no cost.',
      remedy: 'Give --sheet-cost as a plain number, such as 12 or 0.35.',
    });
  });
});
