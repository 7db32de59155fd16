// `npm test`: everything that is tried of the house, the quick checks first. A failure in one part hides no other.
import { CHECKS, unitTests, WINDOW_TESTS } from './parts.ts';
import { closingLine, summaryLine } from './summary.ts';

const parts = [...CHECKS, unitTests(), WINDOW_TESTS];
const seed = process.env.TURNLAY_SEED ?? '1';
console.log(`Property tests draw the same cases at every run (seed ${seed}); npm run deep draws others.`);
const counted = parts.map(({ name, run }) => {
  const begun = Date.now();
  console.log(`\n== ${name}`);
  return { name, ...run(), seconds: Math.round((Date.now() - begun) / 1000) };
});
console.log(['', ...counted.map(summaryLine), '', closingLine(counted)].join('\n'));
process.exitCode = counted.some(({ failed }) => failed > 0) ? 1 : 0;
