// The thread in which a job is sent or proved, so that the window stays lively meanwhile: one task, one outcome.
import type { SendProgress } from '../../shared/contract/sendProgress.ts';
import { doTask } from '../thread/doTask.ts';
import { doSendTask, type SendOutcome, type SendTask } from './sendTask.ts';

doTask<SendTask, SendOutcome, SendProgress>(
  (task, { signal, tell }) => doSendTask(task, signal, tell),
  (outcome) => (outcome.at === 'done' ? outcome.pictures.map(({ png }) => png.buffer as ArrayBuffer) : []),
);
