// The thread in which strangers' files are opened: one file, told of as soon as its pages are known and once they are tried out.
import { parentPort, type Transferable } from 'node:worker_threads';
import type { Result } from '../../shared/fault/result.ts';
import { type ArtReport, examine, type Question } from './examine.ts';

/** What the thread says of the file. */
export type ArtWord =
  | { readonly is: 'pages'; readonly report: ArtReport }
  | { readonly is: 'whole'; readonly answer: Result<ArtReport> };

const port = parentPort;
if (port === null) throw new Error('The art worker runs in a thread of its own');
const say = (word: ArtWord, moved: readonly Transferable[] = []) => port.postMessage(word, [...moved]);

// It may have been started long before there is anything to ask.
port.once('message', async (question: Question) => {
  const answer = await examine(question, (report) => say({ is: 'pages', report }));
  const mended = answer.ok ? answer.value.mended : undefined;
  say({ is: 'whole', answer }, mended === undefined ? [] : [mended.buffer as ArrayBuffer]);
});
