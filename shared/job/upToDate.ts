// Bringing a file of any earlier version up to the present one, a step at a time.
import { type FaultCode, ok, type Result, refuse } from '../fault/result.ts';

/** A file between versions: nothing is known of it but that it is an object. */
export type OldFile = Readonly<Record<string, unknown>>;

/** One kind of file and the versions it has had. */
export interface Versions {
  /** What a person calls it: a "job". */
  readonly called: string;
  readonly present: number;
  /** `steps[n]` turns a file of version n + 1 into one of version n + 2. Numbered without gaps. */
  readonly steps: readonly ((file: OldFile) => OldFile)[];
  readonly invalid: FaultCode;
  readonly tooNew: FaultCode;
  /** What to do with a file that is none. */
  readonly remedy: string;
}

/** The file as one of the present version. Refuses what is no such file (`invalid`), and later versions (`tooNew`). */
export function bringUpToDate(json: unknown, versions: Versions): Result<OldFile> {
  const { called, present, steps } = versions;
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    return noSuchFile(versions, 'It is not a JSON object.');
  }
  const file = json as OldFile;
  const version = file.schema;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return noSuchFile(versions, `It does not say which version of the ${called} file it is ("schema").`);
  }
  if (version > present) {
    return refuse({
      code: versions.tooNew,
      message: `This ${called} was saved by a later version of the program (${called} file ${version}; this program reads up to ${present}).`,
      remedy:
        'Open it with the program that saved it, or bring this one up to date. The file has not been changed.',
      where: 'schema',
    });
  }
  return ok(steps.slice(version - 1).reduce((older, step) => step(older), file));
}

function noSuchFile({ called, invalid, remedy }: Versions, says: string) {
  return refuse({
    code: invalid,
    message: `This is not a ${called} file. ${says}`,
    remedy,
    where: 'schema',
  });
}
