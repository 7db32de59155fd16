// Starts the art worker.
import { startThread } from '../thread/startThread.mjs';

await startThread('startArtWorker', () => import('./artWorker.ts'));
