// Starts the thread that plans gang runs from its source: a thread does not inherit what makes its parent understand TypeScript.
import { register } from 'tsx/esm/api';

register();
await import('./gangWorker.ts');
