// Starts the thread that makes papers.
import { startThread } from '../thread/startThread.mjs';

await startThread('startTicketWorker', () => import('./ticketWorker.ts'));
