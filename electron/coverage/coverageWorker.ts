// The thread in which the ink of a job is measured: one job, one answer.
import { doTask } from '../thread/doTask.ts';
import { measureJob } from './jobCoverage.ts';

doTask(measureJob);
