// The command line's benchmark: how long its answers take, as multiples of Node's own start in the same run.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const TURNLAY = join(import.meta.dirname, '../../electron/cli/turnlay.mjs');

/** How many times as long as bare Node each may take. */
const CASES = [
  ['turnlay --help', 3, () => ['--help']],
  ['turnlay lay of the supper', 8, (at: (name: string) => string) => lay(at)],
] as const;
const ROUNDS = 9;

const lay = (at: (name: string) => string) => ['lay', at('demo/supper.json'), '--job', at('bench.turnlay')];

function secondsOf(args: readonly string[]): number {
  const begun = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return (performance.now() - begun) / 1000;
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/** Prints one line for each case. */
export function benchCli(): void {
  console.log('The command line | times the start of bare Node (allowed) | seconds');
  const folder = mkdtempSync(join(tmpdir(), 'turnlay-bench-'));
  const at = (name: string) => join(folder, name);
  try {
    secondsOf([TURNLAY, 'demo', at('demo')]);
    const rounds = Array.from({ length: ROUNDS }, () => ({
      bare: secondsOf(['-e', '0']),
      cases: CASES.map(([, , args]) => secondsOf([TURNLAY, ...args(at)])),
    }));
    const bare = median(rounds.map((round) => round.bare));
    CASES.forEach(([name, allowed], i) => {
      const seconds = median(rounds.map((round) => round.cases[i] ?? 0));
      console.log(`${name} | ${(seconds / bare).toFixed(1)} (${allowed}) | ${seconds.toFixed(3)}`);
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
