// Starts the thread that sends.
import { startThread } from '../thread/startThread.mjs';

await startThread('startSendWorker', () => import('./sendWorker.ts'));
