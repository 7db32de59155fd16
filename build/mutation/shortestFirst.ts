// The order in which test files meet a mutant: the quickest first, since one that fails spares the rest.
import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

export class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { cache, config } = this.ctx;
    const durationOf = ({ project, moduleId }: TestSpecification) =>
      cache.getFileTestResults(`${project.name}:${relative(config.root, moduleId)}`)?.duration ?? 0;
    return [...files].sort((a, b) => durationOf(a) - durationOf(b));
  }
}
