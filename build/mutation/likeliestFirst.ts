// The order in which test files meet a mutant: one that fails spares the rest, and neighbours mostly fail in the same file.
import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const NEVER_RUN = { failed: false, duration: 0 };

/** What failed on the mutant before comes first, then the quickest. */
export class LikeliestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { cache, config } = this.ctx;
    const resultOf = ({ project, moduleId }: TestSpecification) =>
      cache.getFileTestResults(`${project.name}:${relative(config.root, moduleId)}`) ?? NEVER_RUN;
    return files.toSorted((a, b) => {
      const [one, other] = [resultOf(a), resultOf(b)];
      return Number(other.failed) - Number(one.failed) || one.duration - other.duration;
    });
  }
}
