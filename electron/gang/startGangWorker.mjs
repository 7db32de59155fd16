// Starts the thread that plans gang runs.
import { startThread } from '../thread/startThread.mjs';

await startThread('startGangWorker', () => import('./gangWorker.ts'));
