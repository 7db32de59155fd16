// The code of a run sheet, followed: which of the jobs that were open here lately it names.
import { basename } from 'node:path';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { JobFiles } from '../disk/jobFiles.ts';
import { fingerprintOf } from '../job/fingerprint.ts';

/** The program's own kind of link. */
export const LINK_SCHEME = 'turnlay';

export function isJobLink(text: string): boolean {
  return text.toLowerCase().startsWith(`${LINK_SCHEME}:`);
}

/**
 * The path of the job that a link names, among these: the one that says what it said when the run sheet was made, else
 * the one whose file has the same name and which was changed since. Refuses (`job-link-unknown`) what names none.
 */
export async function findLinkedJob(link: string, paths: readonly string[]): Promise<Result<string>> {
  const [, query = ''] = /^turnlay:job\?(.*)$/i.exec(link) ?? [];
  const named = new URLSearchParams(query);
  const print = named.get('print');
  const file = named.get('file');
  if (print === null || !/^[0-9a-f]{16,64}$/.test(print)) return refuse(NO_CODE);
  const files = new JobFiles();
  for (const path of paths) {
    const job = await files.open(path);
    if (job.ok && fingerprintOf(job.value).startsWith(print)) return ok(path);
  }
  const sameName = paths.find((path) => basename(path) === file);
  return sameName === undefined ? refuse(notHere(file)) : ok(sameName);
}

const NO_CODE: Fault = {
  code: 'job-link-unknown',
  message: 'This link is not the code of a run sheet.',
  remedy: 'Open the job from where it is saved.',
};

function notHere(file: string | null): Fault {
  return {
    code: 'job-link-unknown',
    message: `The job of this run sheet${file === null ? '' : ` (${file})`} is not among those that were open here lately.`,
    remedy: 'Open it from where it is saved.',
  };
}
