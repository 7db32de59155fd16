// The tests of a mutation run: a file that does not load is told, and those that are likely to fail come first.
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createVitest, type Vitest } from 'vitest/node';
import { LikeliestFirst } from '../../build/mutation/likeliestFirst.ts';
import { loadFailureReporter } from '../../build/mutation/loadFailures.ts';
import { testFolder } from '../kit/folder.ts';

const { path, save } = testFolder();
const node = join(import.meta.dirname, '../../node_modules/vitest/dist/index.js');
const fileOf = (body: string) => `import { it } from ${JSON.stringify(node)};\n${body}\n`;
const SOUND = save('sound.test.ts', fileOf(`it('is sound', () => {});`));
const waiting = (ms: number) => `await new Promise((done) => setTimeout(done, ${ms}));`;
const SLOW = save('slow.test.ts', fileOf(`it('is slow', async () => { ${waiting(400)} });`));
const SLOWER_AND_BROKEN = save(
  'broken.test.ts',
  fileOf(`it('is broken', async () => { ${waiting(800)} throw new Error(); });`),
);
const LOST = save('lost.test.ts', fileOf(`import './isNotThere.ts';\nit('is never tried', () => {});`));

async function run<T>(files: readonly string[], look: (vitest: Vitest) => Promise<T> | T): Promise<T> {
  const vitest = await createVitest('test', {
    config: false,
    root: path,
    watch: false,
    include: ['*.test.ts'],
    isolate: false,
    maxWorkers: 1,
    sequence: { sequencer: LikeliestFirst },
    reporters: [loadFailureReporter()],
  });
  try {
    await vitest.start([...files]);
    return await look(vitest);
  } finally {
    await vitest.close();
  }
}

/** What Stryker looks at beside the tests. */
const errorsOf = (vitest: Vitest) => vitest.state.getUnhandledErrors().map((error) => `${error}`);

describe('the tests that mutants are tried with', () => {
  it('fail as a whole, with its name, where one file does not load', async () => {
    const errors = await run([SOUND, LOST], errorsOf);
    expect(errors).toHaveLength(1);
    expect(errors[0]).toContain(`${LOST} does not load`);
  });

  it('have no error where all files load', async () => {
    expect(await run([SOUND, SLOW], errorsOf)).toEqual([]);
  });

  it('begin with a file that failed before, then go from the quickest to the slowest', async () => {
    const order = await run([SLOW, SLOWER_AND_BROKEN, SOUND], async (vitest) => {
      const specs = [SLOW, SLOWER_AND_BROKEN, SOUND].map((file) =>
        vitest.getRootProject().createSpecification(file),
      );
      return (await new LikeliestFirst(vitest).sort(specs)).map(({ moduleId }) => moduleId);
    });
    expect(order).toEqual([SLOWER_AND_BROKEN, SOUND, SLOW]);
  });
});
