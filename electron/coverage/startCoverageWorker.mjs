// Starts the thread that measures ink.
import { startThread } from '../thread/startThread.mjs';

await startThread('startCoverageWorker', () => import('./coverageWorker.ts'));
