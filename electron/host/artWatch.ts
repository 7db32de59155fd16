// Watching the art of the open job: a file that changes, goes or comes back is told at once.
import { type FSWatcher, watch } from 'chokidar';
import type { ArtState } from '../../shared/contract/art.ts';
import type { Job } from '../../shared/job/job.ts';
import { type ArtStates, artOfJob } from './artStates.ts';

/** How long a file must lie still before it is looked at, in ms: programs write large files in parts. */
const STILL_FOR_MS = 400;

export class ArtWatch {
  readonly #states: ArtStates;
  readonly #tell: (state: ArtState) => void;
  #files: ReadonlyMap<string, ReadonlySet<string>> = new Map();
  #beside: readonly string[] = [];
  #watcher: FSWatcher | undefined;
  /** What was last told of each file. */
  readonly #told = new Map<string, ArtState['state']>();

  constructor(states: ArtStates, tell: (state: ArtState) => void) {
    this.#states = states;
    this.#tell = tell;
  }

  /** Watches the art of this job from now on, named by whole paths. `beside`: folders where moved art may be. */
  follow(job: Job, beside: readonly string[]): void {
    const files = artOfJob(job);
    this.#beside = beside;
    const before = this.#files;
    this.#files = files;
    this.#watcher ??= this.#open();
    this.#watcher.unwatch([...before.keys()].filter((path) => !files.has(path)));
    this.#watcher.add([...files.keys()].filter((path) => !before.has(path)));
  }

  async end(): Promise<void> {
    await this.#watcher?.close();
    this.#watcher = undefined;
    this.#files = new Map();
    this.#told.clear();
  }

  #open(): FSWatcher {
    // Each file is looked at once when its watching has begun, since it may have changed in between.
    const watcher = watch([], {
      ignoreInitial: false,
      awaitWriteFinish: { stabilityThreshold: STILL_FOR_MS, pollInterval: 100 },
    });
    const look = (path: string) => {
      this.#look(path).catch((error) => watcher.emit('error', error));
    };
    return watcher.on('add', look).on('change', look).on('unlink', look);
  }

  async #look(path: string): Promise<void> {
    const hashes = this.#files.get(path);
    if (hashes === undefined) return;
    const state = await this.#states.of(path, hashes, this.#beside);
    if (state.state === 'as-laid-out' && (this.#told.get(path) ?? 'as-laid-out') === 'as-laid-out') return;
    this.#told.set(path, state.state);
    this.#tell(state);
  }
}
