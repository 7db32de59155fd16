// Starts the thread that sends from its source: a thread does not inherit what makes its parent understand TypeScript.
import { register } from 'tsx/esm/api';

register();
await import('./sendWorker.ts');
