// The handlers of the host: one for each call of the contract.
import { homedir } from 'node:os';
import type { Beginning } from '../../shared/contract/app.ts';
import type { ChooserAnswer } from '../../shared/contract/choosing.ts';
import type { FileEntry } from '../../shared/contract/handles.ts';
import type { Handlers } from '../../shared/contract/host.ts';
import type { CopiedFile, FileTrouble, OwnFileTrouble } from '../../shared/contract/ownFiles.ts';
import type { SendAsk } from '../../shared/contract/sending.ts';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { runsOn } from '../about/runsOn.ts';
import type { InkDesk } from '../coverage/inkDesk.ts';
import { readLibraryFile } from '../disk/libraryFiles.ts';
import type { GangDesk } from '../gang/gangDesk.ts';
import type { ArtDesk } from './artDesk.ts';
import { listFolder, makeFolderIn, newFileIn } from './browse.ts';
import type { Entries } from './entries.ts';
import type { LibraryKeeper } from './libraryKeeper.ts';
import type { OpenJobs } from './openJobs.ts';
import type { RecentsKeeper } from './recentsKeeper.ts';
import type { RunLogs } from './runLogs.ts';
import type { Sends } from './sends.ts';
import type { SettingsKeeper } from './settingsKeeper.ts';
import type { ChosenPaths, Shell } from './shell.ts';
import { jobFromWindow } from './windowJob.ts';
import { writePapers } from './writePapers.ts';

/** What the handlers rest on. */
export interface HandlerServices {
  readonly shell: Shell;
  readonly version: string;
  readonly platform: NodeJS.Platform;
  readonly now: () => Date;
  readonly entries: Entries;
  readonly settings: SettingsKeeper;
  readonly recents: RecentsKeeper;
  readonly jobs: OpenJobs;
  readonly art: ArtDesk;
  readonly sends: Sends;
  readonly ink: InkDesk;
  readonly gangs: GangDesk;
  readonly runs: RunLogs;
  readonly library: LibraryKeeper;
  /** The jobs that the person asked to open before the window was there; asked for once. */
  readonly takeAsked: () => readonly FileEntry[];
}

export function makeHandlers(on: HandlerServices): Handlers {
  const { shell, entries, settings, recents, jobs, art, sends, ink, gangs, runs, library } = on;
  const begin = async (what: 'send' | 'prove', ask: SendAsk) => {
    const job = jobFromWindow(entries, ask.job);
    if (!job.ok) return job;
    const folder = entries.folders.resolve(ask.folder);
    if (!folder.ok) return folder;
    const { replace = false, despiteFindings = false } = ask;
    return ok({
      send: sends.begin({ what, job: job.value, folder: folder.value, replace, despiteFindings }),
    });
  };
  const browsing = async <T>(look: () => Promise<Result<T>>): Promise<Result<T>> =>
    shell.kind === 'browser' ? look() : refuse(BROWSING_OFF);

  return {
    app: {
      begin: async () => ({
        version: on.version,
        runsOn: runsOn(process.versions),
        shell: shell.kind,
        machine: machineOf(on.platform),
        settings: await settings.read(),
        troubles: [
          ...troubleOf('settings', await settings.trouble()),
          ...troubleOf('library', await library.trouble()),
        ],
        recents: await recents.list(),
        kept: await jobs.left(),
        asked: on.takeAsked(),
      }),
      show: (shown) => {
        shell.show(shown);
        return null;
      },
      close: () => {
        shell.close();
        return null;
      },
    },
    settings: {
      read: () => settings.read(),
      change: (change) => settings.change(change),
      takeBack: () => settings.takeBack(),
    },
    recents: {
      list: () => recents.list(),
      forget: async ({ file }) => {
        await recents.forget(file);
        return recents.list();
      },
    },
    job: {
      lay: ({ brief }) => jobs.lay(brief),
      layFile: ({ file }) => onPath(entries.files.resolve(file), (path) => jobs.layFile(path)),
      open: ({ file }) => onPath(entries.files.resolve(file), (path) => jobs.open(path)),
      save: (ask) => jobs.save(ask),
      keep: (ask) => jobs.keep(ask),
      takeUp: ({ kept }) => jobs.takeUp(kept),
      letGo: ({ kept }) => jobs.letGo(kept),
      close: () => jobs.close(),
    },
    choose: {
      files: async ({ kind, many }) =>
        choiceOf(await shell.chooseFiles(kind, many), (paths) => paths.map((p) => entries.file(p))),
      newFile: async ({ name }) =>
        choiceOf(await shell.chooseNewFile(name), ([path = '']) => entries.file(path)),
      folder: async ({ title }) =>
        choiceOf(await shell.chooseFolder(title), ([path = '']) => entries.folder(path)),
    },
    files: {
      list: ({ folder, show }) =>
        browsing(() =>
          onPath(folder === undefined ? ok(homedir()) : entries.folders.resolve(folder), (path) =>
            listFolder(entries, path, show),
          ),
        ),
      newFile: ({ folder, name }) =>
        browsing(() => onPath(entries.folders.resolve(folder), (path) => newFileIn(entries, path, name))),
      newFolder: ({ folder, name }) =>
        browsing(() => onPath(entries.folders.resolve(folder), (path) => makeFolderIn(entries, path, name))),
    },
    art: {
      takeIn: ({ file }) => onPath(entries.files.resolve(file), (path) => art.takeIn(path)),
      look: (ask) => onPath(entries.art.resolve(ask.art), (path) => art.look(path)),
      check: (ask) => jobs.checkArt(ask),
      findTrim: (ask) => onPath(entries.art.resolve(ask.art), (path) => art.findTrim(path, ask)),
    },
    send: {
      plan: ({ job, folder }) =>
        onPath(jobFromWindow(entries, job), (named) => sends.plan(named, folder, on.now())),
      start: (ask) => begin('send', ask),
      prove: (ask) => begin('prove', ask),
      state: ({ send }) => sends.state(send),
      cancel: ({ send }) => sends.cancel(send),
    },
    library: {
      read: () => library.read(),
      change: (ask) => library.change(ask.library),
      takeBack: () => library.takeBack(),
      import: ({ file }) => onPath(entries.files.resolve(file), readLibraryFile),
      export: (ask) => library.export(ask),
    },
    ink: { coverage: (ask) => onPath(jobFromWindow(entries, ask.job), (job) => ink.coverage(job)) },
    gang: {
      solve: (ask) => gangs.solve(ask),
      stop: () => {
        gangs.stop();
        return null;
      },
    },
    ticket: { write: (ask) => writePapers(entries, library, ask, on.now()) },
    run: {
      read: ({ file }) => onPath(entries.files.resolve(file), (path) => runs.read(path)),
      record: ({ file, event }) =>
        onPath(entries.files.resolve(file), (path) => runs.record(path, event, on.now())),
      packingSlip: ({ file, job, delivery }) =>
        onPath(entries.files.resolve(file), (path) => runs.packingSlip(path, job, delivery)),
      all: () => runs.all(),
    },
  };
}

/** Goes on with what a handle stands for; an unknown one is the answer itself. */
async function onPath<P, T>(
  found: Result<P>,
  go: (value: P) => Result<T> | Promise<Result<T>>,
): Promise<Result<T>> {
  return found.ok ? go(found.value) : found;
}

function troubleOf(file: CopiedFile, trouble: OwnFileTrouble | undefined): readonly FileTrouble[] {
  return trouble === undefined ? [] : [{ file, ...trouble }];
}

function choiceOf<T>(paths: ChosenPaths, entry: (paths: readonly string[]) => T): ChooserAnswer<T> {
  if (paths === 'no-dialog') return { kind: 'no-dialog' };
  return paths.length === 0 ? { kind: 'cancelled' } : { kind: 'chosen', chosen: entry(paths) };
}

function machineOf(platform: NodeJS.Platform): Beginning['machine'] {
  if (platform === 'darwin') return 'mac';
  return platform === 'win32' ? 'windows' : 'linux';
}

const BROWSING_OFF: Fault = {
  code: 'browsing-off',
  message: 'Folders are not listed here.',
  remedy: 'Choose with the dialog of the system.',
};
