// Looking through a stranger's file in a thread that may hang, crash or swell without taking the program with it.
import { basename } from 'node:path';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Thread } from '../thread/thread.ts';
import type { ThreadFailure } from '../thread/threadFailure.ts';
import { ART_THREAD_LIMITS, type ArtThreadLimits, startArtThread } from './artThread.ts';
import type { ArtReport, Question } from './examine.ts';

export type { ArtReport } from './examine.ts';

export interface InspectOptions extends Omit<Question, 'path'> {
  readonly limits?: Partial<ArtThreadLimits>;
}

/** A file that is being looked through: what its pages are is known before all that is on them was tried out. */
export interface Inspection {
  /** What the pages are, with what is known of the file by then; the refusal of a file that gives none. */
  readonly pages: Promise<Result<ArtReport>>;
  /** The same once each page was tried out. */
  readonly whole: Promise<Result<ArtReport>>;
}

/**
 * Opens the file in a thread of its own, reads the size and boxes of its pages, and tries out whether they can be
 * placed. Refusals: those of the file (`art-missing`, `file-unreadable`, `art-not-pdf`, `art-locked`, `art-damaged`,
 * `art-empty`, `art-page-missing`, `art-too-large`), and `art-took-too-long`. Nothing that the file holds makes it
 * throw.
 */
export function inspectArt(path: string, options: InspectOptions = {}): Promise<Result<ArtReport>> {
  return beginInspection(path, options).whole;
}

/** The same, told in its two parts. `thread`: one that was started before and waits for its question. */
export function beginInspection(
  path: string,
  options: InspectOptions = {},
  thread: Thread = startArtThread(options.limits?.megabytes),
): Inspection {
  const { limits, ...asked } = options;
  const { seconds } = { ...ART_THREAD_LIMITS, ...limits };
  const question: Question = { path, ...asked };
  let tellPages: (report: Result<ArtReport>) => void = () => {};
  const pages = new Promise<Result<ArtReport>>((resolve) => {
    tellPages = resolve;
  });
  const onTheWay = (report: ArtReport) => tellPages(ok(report));
  const whole = thread.run<Result<ArtReport>, ArtReport>(question, { seconds, onTheWay }).then((came) => {
    const answer = came.ok ? came.value : refuse(faultOf(came.fault, basename(path), path));
    tellPages(answer);
    return answer;
  });
  return { pages, whole };
}

function faultOf(failure: ThreadFailure, name: string, path: string): Fault {
  switch (failure.why) {
    case 'too-slow':
      return tooSlow(name, path, failure.seconds);
    case 'too-large':
      return tooLarge(name, path);
    default:
      return isTooDeep(failure) ? tooLarge(name, path) : crashed(name, path);
  }
}

/** Something in the file was larger, or nested deeper, than the language can hold. */
function isTooDeep(failure: ThreadFailure): boolean {
  return failure.why === 'broke-down' && failure.error instanceof RangeError;
}

function tooSlow(name: string, path: string, seconds: number): Fault {
  return {
    code: 'art-took-too-long',
    message: `${name} could not be read within ${seconds} seconds and was given up.`,
    remedy:
      'Simplify the file or export it again; if its disk or share is slow, copy it to this machine first.',
    where: path,
  };
}

function tooLarge(name: string, path: string): Fault {
  return {
    code: 'art-too-large',
    message: `${name} unpacks to more than this program dares to hold, and was given up.`,
    remedy: 'Export only the pages that this job prints, and turn very detailed drawings into pictures.',
    where: path,
  };
}

function crashed(name: string, path: string): Fault {
  return {
    code: 'art-damaged',
    message: `${name} is damaged in a way that stopped it from being read.`,
    remedy: 'Ask for the file again, or open it in a PDF viewer and print it into a new PDF.',
    where: path,
  };
}
