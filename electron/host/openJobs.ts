// The open job on its way between window and disk: laid out, opened, saved, kept, taken up again.
import { basename, dirname } from 'node:path';
import type { ArtState, CheckArtAsk } from '../../shared/contract/art.ts';
import type { FileHandle, KeptHandle } from '../../shared/contract/handles.ts';
import type { KeepAsk, OpenJob, SaveAsk, Saved, UnsavedJob } from '../../shared/contract/openJob.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import type { Job } from '../../shared/job/job.ts';
import { openBriefFile } from '../disk/briefFiles.ts';
import { rebaseJob } from '../disk/faceFiles.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { JobFiles } from '../disk/jobFiles.ts';
import { layJob } from '../job/layJob.ts';
import type { ArtStates } from './artStates.ts';
import type { ArtWatch } from './artWatch.ts';
import type { Entries } from './entries.ts';
import { HandleTable } from './handleTable.ts';
import { type Keeping, readKept } from './keeping.ts';
import type { RecentsKeeper } from './recentsKeeper.ts';
import type { TakenIn } from './takenIn.ts';
import { artFilesOf, briefFromWindow, jobForWindow, jobFromWindow } from './windowJob.ts';

/** What the open jobs rest on. */
export interface JobServices {
  readonly entries: Entries;
  readonly states: ArtStates;
  readonly watch: ArtWatch;
  readonly keeping: Keeping;
  readonly recents: RecentsKeeper;
  readonly takenIn: TakenIn;
  readonly now: () => Date;
}

export class OpenJobs {
  readonly #on: JobServices;
  readonly #files = new JobFiles();
  readonly #kept = new HandleTable<KeptHandle>();

  constructor(services: JobServices) {
    this.#on = services;
  }

  async lay(brief: Brief): Promise<Result<OpenJob>> {
    const named = briefFromWindow(this.#on.entries, brief);
    return named.ok ? this.#layOut(named.value) : named;
  }

  async layFile(path: string): Promise<Result<OpenJob>> {
    const brief = await openBriefFile(path);
    return brief.ok ? this.#layOut(brief.value) : brief;
  }

  async open(path: string): Promise<Result<OpenJob>> {
    const job = await this.#files.open(path);
    if (!job.ok) return job;
    await this.#on.keeping.drop();
    await this.#remember(path, job.value);
    return ok(await this.#hand(job.value, path, false, []));
  }

  async save({ file, job, replace = false }: SaveAsk): Promise<Result<Saved>> {
    const path = this.#on.entries.files.resolve(file);
    if (!path.ok) return path;
    const named = jobFromWindow(this.#on.entries, job);
    if (!named.ok) return named;
    const settled = await this.#settleArt(named.value, path.value);
    if (!settled.ok) return settled;
    const saved = await this.#files.save(path.value, settled.value, replace);
    if (!saved.ok) return saved;
    await this.#on.keeping.drop();
    await this.#remember(path.value, settled.value);
    this.#on.watch.follow(settled.value, [dirname(path.value)]);
    return ok({
      file: this.#on.entries.file(path.value),
      job: jobForWindow(this.#on.entries, settled.value),
    });
  }

  async keep({ job, file }: KeepAsk): Promise<Result<{ readonly at: string }>> {
    const path = this.#pathOf(file);
    if (!path.ok) return path;
    const named = jobFromWindow(this.#on.entries, job);
    if (!named.ok) return named;
    this.#on.watch.follow(named.value, besideOf(path.value));
    return this.#keep(named.value, path.value);
  }

  /** The jobs that were left behind. */
  async left(): Promise<readonly UnsavedJob[]> {
    const kept = await this.#on.keeping.list();
    return kept.map(({ path, title, file, at }) => ({
      kept: this.#kept.issue(path),
      title,
      at,
      ...(file === undefined ? {} : { file: this.#on.entries.file(file) }),
    }));
  }

  /** From now on it is this host that keeps the job. */
  async takeUp(handle: KeptHandle): Promise<Result<OpenJob>> {
    const path = this.#kept.resolve(handle);
    if (!path.ok) return path;
    const kept = await readKept(path.value);
    if (kept === undefined) {
      return refuse({
        code: 'file-missing',
        message: 'The kept job is no longer there, or is damaged.',
        remedy: 'Open the job from its file.',
        where: path.value,
      });
    }
    const { job, file, seen } = kept;
    if (file !== undefined && seen !== undefined) this.#files.recall(file, seen);
    const mine = await this.#keep(job, file);
    if (!mine.ok) return mine;
    await this.#on.keeping.relieve(path.value);
    return ok(await this.#hand(job, file, true, []));
  }

  async letGo(handle: KeptHandle): Promise<Result<null>> {
    const path = this.#kept.resolve(handle);
    if (!path.ok) return path;
    await this.#on.keeping.throwAway(path.value);
    return ok(null);
  }

  async close(): Promise<null> {
    await this.#on.keeping.drop();
    await this.#on.watch.end();
    return null;
  }

  /** How the art of a job is now; art that has moved is looked for beside its file. */
  async checkArt({ job, file }: CheckArtAsk): Promise<Result<readonly ArtState[]>> {
    const named = jobFromWindow(this.#on.entries, job);
    if (!named.ok) return named;
    const path = this.#pathOf(file);
    return path.ok ? ok(await this.#on.states.ofJob(named.value, besideOf(path.value))) : path;
  }

  async #layOut(brief: Brief): Promise<Result<OpenJob>> {
    const laid = await layJob(brief);
    if (!laid.ok) return laid;
    const kept = await this.#keep(laid.value.job, undefined);
    const notices = kept.ok ? laid.value.notices : [...laid.value.notices, kept.fault.message];
    return ok(await this.#hand(laid.value.job, undefined, true, notices));
  }

  async #keep(job: Job, file: string | undefined): Promise<Result<{ readonly at: string }>> {
    try {
      for (const path of artFilesOf(job.brief)) await this.#on.takenIn.whole(path);
    } catch (error) {
      return refuse(writingFault(error, file ?? job.brief.title));
    }
    const origin = file === undefined ? {} : { file, seen: this.#files.seenAt(file) };
    return this.#on.keeping.keep(job, origin, this.#on.now());
  }

  async #hand(
    job: Job,
    file: string | undefined,
    unsaved: boolean,
    notices: readonly string[],
  ): Promise<OpenJob> {
    const beside = besideOf(file);
    this.#on.watch.follow(job, beside);
    const paths = artFilesOf(job.brief);
    return {
      job: jobForWindow(this.#on.entries, job),
      ...(file === undefined ? {} : { file: this.#on.entries.file(file) }),
      unsaved,
      art: await this.#on.states.ofJob(job, beside),
      artNames: Object.fromEntries(paths.map((path) => [this.#on.entries.art.issue(path), basename(path)])),
      notices,
    };
  }

  #pathOf(file: FileHandle | undefined): Result<string | undefined> {
    return file === undefined ? ok(undefined) : this.#on.entries.files.resolve(file);
  }

  /** Art that has no place of its own is put beside the job, and its handle means that place from now on. */
  async #settleArt(job: Job, file: string): Promise<Result<Job>> {
    const places = new Map<string, string>();
    try {
      for (const path of artFilesOf(job.brief)) {
        places.set(path, await this.#on.takenIn.settle(path, file));
      }
    } catch (error) {
      return refuse(writingFault(error, file));
    }
    for (const [path, place] of places) {
      if (place !== path) this.#on.entries.art.move(this.#on.entries.art.issue(path), place);
    }
    return ok(rebaseJob(job, (path) => places.get(path) ?? path));
  }

  async #remember(path: string, job: Job): Promise<void> {
    await this.#on.recents.add(path, job.brief.title, this.#on.now()).catch(() => undefined);
  }
}

const besideOf = (file: string | undefined) => (file === undefined ? [] : [dirname(file)]);
