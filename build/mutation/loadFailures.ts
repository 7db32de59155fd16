// A test file that does not load fails the run that it belongs to: Stryker by itself only looks at tests, and such a file has none.
import type { Reporter, Vitest } from 'vitest/node';

/** What such an error says after the name of its file. */
export const DOES_NOT_LOAD = 'does not load';

/** Tells every error outside of tests (of imports, of what stands beside the tests in a file) as an error of the run. */
export function loadFailureReporter(): Reporter {
  let vitest: Vitest | undefined;
  return {
    onInit(started) {
      vitest = started;
    },
    onTestModuleEnd(testFile) {
      for (const error of testFile.errors()) {
        const said = `${testFile.moduleId} ${DOES_NOT_LOAD}: ${error.message}`;
        vitest?.state.catchError(new Error(said), 'Test file');
      }
    },
  };
}
