// The sendings and provings of this host: begun, followed, cancelled, and their pictures shown.
import { lstat } from 'node:fs/promises';
import { join } from 'node:path';
import type { FolderHandle, SendHandle } from '../../shared/contract/handles.ts';
import type { SendNews, SendPlan, SendState } from '../../shared/contract/sending.ts';
import type { SendProgress } from '../../shared/contract/sendProgress.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { nameJobFiles } from '../../shared/job/nameJobFiles.ts';
import type { SendOutcome, SendTask } from '../job/sendTask.ts';
import { startSending } from '../job/startSending.ts';
import type { Entries } from './entries.ts';
import { newHandle, UNKNOWN_HANDLE } from './handleTable.ts';

interface Sending {
  state: SendState;
  readonly cancel: AbortController;
  ended: Promise<unknown>;
}

export class Sends {
  readonly #entries: Entries;
  readonly #tell: (news: SendNews) => void;
  readonly #sendings = new Map<SendHandle, Sending>();
  /** PNG pictures by their address. */
  readonly #pictures = new Map<string, Uint8Array>();

  constructor(entries: Entries, tell: (news: SendNews) => void) {
    this.#entries = entries;
    this.#tell = tell;
  }

  /** What sending this job now would write. The faces of the job name whole paths. */
  async plan(job: Job, folder: FolderHandle, now: Date): Promise<Result<SendPlan>> {
    const path = this.#entries.folders.resolve(folder);
    if (!path.ok) return path;
    const named = nameJobFiles(job, now.toISOString().slice(0, 10));
    if (!named.ok) return named;
    const files = await Promise.all(
      named.value.names.map(async (name) => ({
        name,
        exists: await lstat(join(path.value, name)).then(
          () => true,
          () => false,
        ),
      })),
    );
    return ok({ folder: this.#entries.folder(path.value), files, sides: named.value.sides });
  }

  /** Begins a task. What earlier ones have shown is forgotten. */
  begin(task: SendTask): SendHandle {
    this.#forgetEnded();
    const send = newHandle<SendHandle>();
    const cancel = new AbortController();
    const sending: Sending = {
      state: { at: 'under-way', progress: { step: 'begin', done: 0, of: 1 } },
      cancel,
      ended: Promise.resolve(),
    };
    this.#sendings.set(send, sending);
    const news = (state: SendState) => {
      sending.state = state;
      this.#tell({ send, state });
    };
    const onProgress = (progress: SendProgress) => news({ at: 'under-way', progress });
    sending.ended = startSending(task, cancel.signal, onProgress).then((outcome) =>
      news(outcome.at === 'done' ? this.#show(send, task.folder, outcome) : outcome),
    );
    return send;
  }

  state(send: SendHandle): Result<SendState> {
    const found = this.#find(send);
    return found.ok ? ok(found.value.state) : found;
  }

  cancel(send: SendHandle): Result<null> {
    const found = this.#find(send);
    if (!found.ok) return found;
    found.value.cancel.abort();
    return ok(null);
  }

  /** A picture of a proof by its address. */
  picture(address: string): Uint8Array | undefined {
    return this.#pictures.get(address);
  }

  /** Cancels what is under way, and waits until every folder is in order. */
  async end(): Promise<void> {
    for (const { cancel } of this.#sendings.values()) cancel.abort();
    await Promise.all([...this.#sendings.values()].map(({ ended }) => ended));
  }

  #find(send: SendHandle): Result<Sending> {
    const sending = this.#sendings.get(send);
    return sending === undefined ? refuse(UNKNOWN_HANDLE) : ok(sending);
  }

  #forgetEnded(): void {
    for (const [send, { state }] of this.#sendings) {
      if (state.at !== 'under-way') this.#sendings.delete(send);
    }
    this.#pictures.clear();
  }

  #show(send: SendHandle, folder: string, outcome: SendOutcome & { readonly at: 'done' }): SendState {
    const { at, pictures, ...sent } = outcome;
    const shown = pictures.map(({ position, png }) => {
      const url = `/proof/${send}/${position}.png`;
      this.#pictures.set(url, png);
      return { position, url };
    });
    return { at, sent: { ...sent, folder: this.#entries.folder(folder), pictures: shown } };
  }
}
