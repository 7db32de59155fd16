// The thread in which the ink of a job is measured: one job, one answer.
import { parentPort, workerData } from 'node:worker_threads';
import type { Job } from '../../shared/job/job.ts';
import { measureJob } from './jobCoverage.ts';

if (parentPort === null) throw new Error('Ink is measured in a thread of its own');
parentPort.postMessage({ outcome: await measureJob(workerData as Job) });
