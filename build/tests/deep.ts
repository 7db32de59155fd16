// `npm run deep`: the property tests with other cases and more of them, round after round, for as long as asked.
//
//   npm run deep -- [--minutes N] [--area FOLDER] [--seed N] [--cases FACTOR]
//
// A round has its own seed and draws FACTOR times as many cases as npm test does. With --seed it is that round alone.
// Only the files that draw their cases are run: of all tests, or of those in FOLDER (shared/layout).
import { randomInt } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { unitTests } from './parts.ts';

const USAGE = 'usage: npm run deep -- [--minutes N] [--area FOLDER] [--seed N] [--cases FACTOR]';
const HOUSE = join(import.meta.dirname, '../..');

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '10' },
    area: { type: 'string', default: '' },
    cases: { type: 'string', default: '10' },
    seed: { type: 'string' },
  },
});
const [minutes, factor] = [Number(values.minutes), Number(values.cases)];
const asked = values.seed === undefined ? undefined : Number(values.seed);
const area = values.area.replace(/^tests\//, '').replace(/\/+$/, '');
const drawing = drawingTests().filter((file) => area === '' || file.startsWith(`tests/${area}/`));
const refusal =
  drawing.length === 0
    ? `No test in tests/${area} draws its cases.`
    : !(minutes > 0) || !(factor >= 1) || (asked !== undefined && !Number.isInteger(asked))
      ? 'Minutes, cases and the seed are numbers.'
      : undefined;
if (refusal !== undefined) {
  console.error(`${refusal}\n${USAGE}`);
  process.exit(2);
}

const end = Date.now() + minutes * 60_000;
let rounds = 0;
let passed = 0;
do {
  const seed = asked ?? randomInt(2 ** 31);
  console.log(`\n== round ${rounds + 1}, seed ${seed}`);
  const counted = unitTests(drawing, { TURNLAY_SEED: String(seed), TURNLAY_CASES: String(factor) }).run();
  rounds += 1;
  passed += counted.passed;
  if (counted.failed > 0) {
    console.error(
      `Again: npm run deep --${area === '' ? '' : ` --area ${area}`} --cases ${factor} --seed ${seed}`,
    );
    console.error('Make the counterexample an example of its test.');
    console.log(`${passed} passed, ${counted.failed} failed`);
    process.exit(1);
  }
} while (asked === undefined && Date.now() < end);
console.log(`${rounds} ${rounds === 1 ? 'round' : 'rounds'}\n${passed} passed, 0 failed`);

/** The test files that draw cases, by their paths from the house. */
function drawingTests(): readonly string[] {
  return readdirSync(join(HOUSE, 'tests'), { recursive: true, encoding: 'utf8' })
    .map((name) => `tests/${name.replaceAll('\\', '/')}`)
    .filter(
      (name) =>
        name.endsWith('.test.ts') && /from 'fast-check'/.test(readFileSync(join(HOUSE, name), 'utf8')),
    );
}
