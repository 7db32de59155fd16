// Why a thread came to nothing, and how that is told.
import type { Fault } from '../../shared/fault/result.ts';

export type ThreadFailure =
  /** `tidySeconds`: what it had to tidy up and was not enough. */
  | { readonly why: 'cancelled'; readonly tidySeconds?: number | undefined }
  | { readonly why: 'too-slow'; readonly seconds: number }
  | { readonly why: 'too-large'; readonly megabytes: number }
  /** `error`: what the thread threw; none where it ended without a word. */
  | { readonly why: 'broke-down'; readonly error?: unknown };

/** What was done in a thread, and what to do when it comes to nothing. */
export interface ThreadWork extends Pick<Fault, 'code' | 'remedy' | 'where'> {
  /** The beginning of a sentence, such as `Writing the papers`. */
  readonly work: string;
}

export function threadFault(failure: ThreadFailure, { work, ...rest }: ThreadWork): Fault {
  return { ...rest, message: `${work} ${endOf(failure)}.` };
}

function endOf(failure: ThreadFailure): string {
  switch (failure.why) {
    case 'cancelled':
      return failure.tidySeconds === undefined
        ? 'was cancelled'
        : `was cancelled, did not stop within ${failure.tidySeconds} seconds and was ended`;
    case 'too-slow':
      return `took longer than ${failure.seconds} seconds and was given up`;
    case 'too-large':
      return `needed more than ${failure.megabytes} MB of memory and was given up`;
    case 'broke-down':
      return `broke down (${failure.error instanceof Error ? failure.error.message : 'it ended early'})`;
  }
}

/** What an error of a thread means that was allowed so many megabytes. */
export function failureOf(error: unknown, megabytes: number): ThreadFailure {
  const outOfMemory = error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY';
  return outOfMemory ? { why: 'too-large', megabytes } : { why: 'broke-down', error };
}
