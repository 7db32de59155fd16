// A folder of a test's own, gone when the test file ends.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** Makes the folder; `save` puts a file into it and gives its path. */
export function testFolder(): {
  readonly path: string;
  save(name: string, content: Uint8Array | string): string;
} {
  const path = mkdtempSync(join(tmpdir(), 'test-'));
  afterAll(() => rmSync(path, { recursive: true }));
  return {
    path,
    save: (name, content) => {
      const file = join(path, name);
      writeFileSync(file, content);
      return file;
    },
  };
}
