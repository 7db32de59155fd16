// The thread in which strangers' files are opened: one file, told of as soon as its pages are known and once they are tried out.
import type { Result } from '../../shared/fault/result.ts';
import { doTask } from '../thread/doTask.ts';
import { type ArtReport, examine, type Question } from './examine.ts';

doTask<Question, Result<ArtReport>, ArtReport>(
  (question, { tell }) => examine(question, tell),
  (answer) => (answer.ok && answer.value.mended ? [answer.value.mended.buffer as ArrayBuffer] : []),
);
