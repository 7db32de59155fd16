// The threads in which strangers' files are opened, and what they may take.
import { Thread } from '../thread/thread.ts';

/** How long and how large the thread may get. */
export interface ArtThreadLimits {
  readonly seconds: number;
  readonly megabytes: number;
}

/** @source common practice, no source: a hundred times what a large poster file was seen to need. */
export const ART_THREAD_LIMITS: ArtThreadLimits = { seconds: 60, megabytes: 2048 };

const START = new URL('./startArtWorker.mjs', import.meta.url);

/** Starts a thread that waits for the one question it will be asked. */
export function startArtThread(megabytes = ART_THREAD_LIMITS.megabytes): Thread {
  return new Thread(START, megabytes);
}
