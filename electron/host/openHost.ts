// The host as a whole: its services made, its handlers bound to them, and what a binding needs of it.
import { extname } from 'node:path';
import type { Dropped } from '../../shared/contract/art.ts';
import type { ArtHandle, FileEntry } from '../../shared/contract/handles.ts';
import type { Handlers, Tell } from '../../shared/contract/host.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { startArtThread } from '../art/artThread.ts';
import { beginInspection } from '../art/inspectArt.ts';
import { InkDesk } from '../coverage/inkDesk.ts';
import { JOB_ENDING } from '../disk/endings.ts';
import { FileHashes } from '../disk/hashes.ts';
import { clearUnfinished } from '../disk/unfinished.ts';
import { GangDesk } from '../gang/gangDesk.ts';
import { SpareThread } from '../thread/spareThread.ts';
import { ArtDesk, type Inspect } from './artDesk.ts';
import { ArtStates } from './artStates.ts';
import { ArtWatch } from './artWatch.ts';
import { Entries } from './entries.ts';
import { makeHandlers } from './handlers.ts';
import { findLinkedJob } from './jobLink.ts';
import { Keeping } from './keeping.ts';
import { LibraryKeeper } from './libraryKeeper.ts';
import { OpenJobs } from './openJobs.ts';
import { RecentsKeeper } from './recentsKeeper.ts';
import { RunLogs } from './runLogs.ts';
import { Sends } from './sends.ts';
import { SettingsKeeper } from './settingsKeeper.ts';
import type { Shell } from './shell.ts';
import { TakenIn } from './takenIn.ts';
import { artFilesOf } from './windowJob.ts';

export interface HostOptions {
  /** The folder of the program's own files; made if it is not there. */
  readonly home: string;
  readonly shell: Shell;
  readonly tell: Tell;
  readonly version: string;
  /** Jobs that the person asks to open at the start, by their paths. */
  readonly asked: readonly string[];
  /** How files of art are looked through; in a thread that waits for them, unless told otherwise. */
  readonly inspect?: Inspect;
}

/** What a binding does with the host. */
export interface OpenedHost {
  readonly handlers: Handlers;
  /** Takes in a dropped file that lies on this machine. */
  dropPath(path: string): Promise<Result<Dropped>>;
  /** Takes in a dropped file that came as bytes. */
  dropBytes(name: string, bytes: AsyncIterable<Uint8Array>): Promise<Result<Dropped>>;
  /** The person asks to open a job: at once, or as soon as the window asks what it begins with. */
  askToOpen(path: string): void;
  /** The person follows the code of a run sheet. Refuses a link that names no job of those open here lately. */
  askForLink(link: string): Promise<Result<null>>;
  /** Whether a window has begun. */
  hasWindow(): boolean;
  /** Where the bytes of art lie; `undefined` for a handle that was not issued here. */
  artPath(art: ArtHandle): string | undefined;
  /** A picture of a proof (PNG) by its address. */
  picture(address: string): Uint8Array | undefined;
  /** Ends in good order. What was kept is found by the next host. */
  end(): Promise<void>;
}

export async function openHost(options: HostOptions): Promise<OpenedHost> {
  const { home, shell, tell, version, asked } = options;
  const now = () => new Date();
  const entries = new Entries();
  const hashes = new FileHashes();
  const states = new ArtStates(entries, hashes);
  const watch = new ArtWatch(states, (state) => tell('art', state));
  const keeping = new Keeping(home);
  const recents = new RecentsKeeper(home, entries);
  const takenIn = new TakenIn(home, hashes);
  const jobs = new OpenJobs({ entries, states, watch, keeping, recents, takenIn, now });
  const spare = new SpareThread(startArtThread);
  const inOwnThread: Inspect = (path, sha256) => {
    const inspection = beginInspection(path, { sha256 }, spare.take());
    // The next file finds a thread waiting too; it starts when this one is out of the way.
    void inspection.whole.then(() => {
      if (waiting === undefined) spare.prepare();
    });
    return inspection;
  };
  const art = new ArtDesk(entries, hashes, options.inspect ?? inOwnThread);
  const sends = new Sends(entries, (news) => tell('send', news));
  const gangs = new GangDesk();
  const runs = new RunLogs(home, entries, (news) => tell('run', news));
  /** What was asked for before a window was there; `undefined` once one is. */
  let waiting: readonly FileEntry[] | undefined = asked.map((path) => entries.file(path));
  const takeAsked = () => {
    const taken = waiting ?? [];
    waiting = undefined;
    spare.prepare();
    return taken;
  };
  await keeping.begin();
  const needed = (await keeping.list()).flatMap(({ job }) => artFilesOf(job.brief));
  // Tidying up may wait for another day.
  await clearUnfinished(home);
  await takenIn.forgetOld(needed, now()).catch(() => undefined);

  const takeIn = async (path: string, sha256?: string): Promise<Result<Dropped>> => {
    const looked = await art.takeIn(path, sha256);
    return looked.ok ? ok({ is: 'art', art: looked.value }) : looked;
  };
  const askToOpen = (path: string) => {
    const file = entries.file(path);
    if (waiting === undefined) tell('open-job', { file });
    else waiting = [...waiting, file];
  };
  return {
    handlers: makeHandlers({
      shell,
      version,
      platform: process.platform,
      now,
      entries,
      settings: new SettingsKeeper(home, entries),
      recents,
      jobs,
      art,
      sends,
      ink: new InkDesk(),
      gangs,
      runs,
      library: new LibraryKeeper(home, entries),
      takeAsked,
    }),
    dropPath: async (path) => (isJob(path) ? ok({ is: 'job', file: entries.file(path) }) : takeIn(path)),
    dropBytes: async (name, bytes) => {
      if (isJob(name)) return refuse(JOB_WITHOUT_PLACE);
      const { path, sha256 } = await takenIn.take(name, bytes);
      return takeIn(path, sha256);
    },
    askToOpen,
    askForLink: async (link) => {
      const found = await findLinkedJob(link, await recents.paths());
      if (!found.ok) return found;
      askToOpen(found.value);
      return ok(null);
    },
    hasWindow: () => waiting === undefined,
    artPath: (handle) => {
      const path = entries.art.resolve(handle);
      return path.ok ? path.value : undefined;
    },
    picture: (address) => sends.picture(address),
    end: async () => {
      gangs.stop();
      await spare.end();
      await sends.end();
      await runs.end();
      await watch.end();
      await keeping.end();
    },
  };
}

const isJob = (name: string) => extname(name).toLowerCase() === JOB_ENDING;

const JOB_WITHOUT_PLACE = {
  code: 'job-invalid',
  message: 'A job that is dropped here comes without its folder, so its art cannot be found beside it.',
  remedy: 'Open it with Open… instead.',
} as const;
