// The logs of runs that this host reads and writes: one after another, and watched for what others write into them.
import { type FSWatcher, watch } from 'chokidar';
import type { FileEntry } from '../../shared/contract/handles.ts';
import type { RunNews } from '../../shared/contract/running.ts';
import { type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import type { RunEvent } from '../../shared/run/events.ts';
import type { RunLog } from '../../shared/run/logText.ts';
import { NOT_BEGUN, type PrintRun } from '../../shared/run/run.ts';
import { NODE_DISK } from '../disk/disk.ts';
import { addToRunLog, logPathOf, readRunLog } from '../disk/runLog.ts';
import type { Entries } from './entries.ts';
import { KnownLogs } from './knownLogs.ts';
import { writePackingSlip } from './packingSlips.ts';

/** How long a log must lie still before it is looked at, in ms: of changes in quick succession the last must be seen. */
const STILL_FOR_MS = 100;

export class RunLogs {
  readonly #known: KnownLogs;
  readonly #entries: Entries;
  readonly #tell: (news: RunNews) => void;
  #last: Promise<unknown> = Promise.resolve();
  /** The job whose log is followed, and what was last known of that log. */
  #followed: { readonly job: string; readonly watcher: FSWatcher; known: string } | undefined;

  constructor(home: string, entries: Entries, tell: (news: RunNews) => void) {
    this.#known = new KnownLogs(home);
    this.#entries = entries;
    this.#tell = tell;
  }

  /** The log of the job at this path. From now on the window is told when somebody else adds to it. */
  async read(job: string): Promise<Result<RunLog>> {
    if (this.#followed?.job !== job) await this.#follow(job);
    return this.#inTurn(job, () => readRunLog(NODE_DISK, logPathOf(job)));
  }

  async record(job: string, event: RunEvent, now: Date): Promise<Result<RunLog>> {
    const path = logPathOf(job);
    const recorded = await this.#inTurn(job, () => addToRunLog(NODE_DISK, path, event, now));
    // Whether a run is remembered for what it teaches is no matter while it is counted.
    if (recorded.ok && event.kind === 'begun') await this.#known.add(path).catch(() => undefined);
    return recorded;
  }

  /** The runs of all logs that were begun here and are still there. */
  async all(): Promise<readonly PrintRun[]> {
    const logs = await Promise.all((await this.#known.paths()).map((path) => readRunLog(NODE_DISK, path)));
    return logs.flatMap((log) => (log.ok ? log.value.book.runs : []));
  }

  /** Writes the packing slip of a delivery of the run that is worked on. */
  async packingSlip(path: string, job: Job, delivery: number): Promise<Result<FileEntry>> {
    const log = await this.#inTurn(path, () => readRunLog(NODE_DISK, logPathOf(path)));
    if (!log.ok) return log;
    const run = log.value.book.runs.at(-1);
    return run === undefined ? refuse(NOT_BEGUN) : writePackingSlip(this.#entries, path, job, run, delivery);
  }

  async end(): Promise<void> {
    await this.#last;
    await this.#followed?.watcher.close();
    this.#followed = undefined;
  }

  #inTurn(job: string, look: () => Promise<Result<RunLog>>): Promise<Result<RunLog>> {
    const looked = this.#last.then(look).then((log) => {
      if (this.#followed?.job === job) this.#followed.known = JSON.stringify(log);
      return log;
    });
    this.#last = looked.catch(() => undefined);
    return looked;
  }

  async #follow(job: string): Promise<void> {
    const before = this.#followed;
    const watcher = watch(logPathOf(job), {
      ignoreInitial: true,
      awaitWriteFinish: { stabilityThreshold: STILL_FOR_MS, pollInterval: 50 },
    });
    this.#followed = { job, watcher, known: '' };
    const look = () => {
      this.#look(job).catch((error) => watcher.emit('error', error));
    };
    watcher.on('add', look).on('change', look).on('unlink', look);
    await before?.watcher.close();
  }

  async #look(job: string): Promise<void> {
    const followed = this.#followed;
    if (followed?.job !== job) return;
    const { known } = followed;
    const log = await this.#inTurn(job, () => readRunLog(NODE_DISK, logPathOf(job)));
    if (log.ok && followed.known !== known) {
      this.#tell({ file: this.#entries.files.issue(job), log: log.value });
    }
  }
}
