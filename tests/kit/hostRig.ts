// A real host in a folder of its own, with a shell that chooses what the test says and a window that writes down all.
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { drawSupper } from '../../electron/demo/art.ts';
import type { Inspect } from '../../electron/host/artDesk.ts';
import { type OpenedHost, openHost } from '../../electron/host/openHost.ts';
import type { ChosenPaths, Shell } from '../../electron/host/shell.ts';
import type { Shown } from '../../shared/contract/app.ts';
import type { Art } from '../../shared/contract/art.ts';
import type { EventName, Events } from '../../shared/contract/events.ts';
import type { ArtHandle, FileHandle } from '../../shared/contract/handles.ts';
import type { OpenJob } from '../../shared/contract/openJob.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { JOB_SCHEMA, type Job } from '../../shared/job/job.ts';
import { writeJob } from '../../shared/job/jobFile.ts';
import { layOutBrief } from '../../shared/job/layOutJob.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { supperWith } from './briefs.ts';
import { granted } from './granted.ts';

const DRAWN_ON = new Date('2026-09-01T12:00:00Z');

/** Something told to the window. */
export type Told = { readonly [E in EventName]: { readonly event: E; readonly told: Events[E] } }[EventName];

export interface HostRig {
  /** The person's folder; the program's own lies in `home` within it. */
  readonly folder: string;
  readonly home: string;
  readonly host: OpenedHost;
  readonly told: readonly Told[];
  /** What the next dialog chooses. */
  choose: ChosenPaths;
  readonly shown: readonly Shown[];
  closed: number;
  at(...names: readonly string[]): string;
  end(): Promise<void>;
}

/** A folder that is gone when the rig's test is over. */
export function newFolder(): string {
  return mkdtempSync(join(tmpdir(), 'turnlay-host-'));
}

export function dropFolder(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
}

/** Opens a host. Another one may be opened in the folder of an earlier one, as by a later start. */
export async function openRig(
  folder: string = newFolder(),
  kind: Shell['kind'] = 'browser',
  asked: readonly string[] = [],
  inspect?: Inspect,
): Promise<HostRig> {
  const home = join(folder, 'home');
  const told: Told[] = [];
  const shown: Shown[] = [];
  const shell: Shell = {
    kind,
    chooseFiles: async () => rig.choose,
    chooseNewFile: async () => rig.choose,
    chooseFolder: async () => rig.choose,
    show: (what) => shown.push(what),
    close: () => {
      rig.closed += 1;
    },
  };
  const host = await openHost({
    home,
    shell,
    tell: (event, what) => told.push({ event, told: what } as Told),
    version: '1.2.3',
    asked,
    ...(inspect && { inspect }),
  });
  const rig: HostRig = {
    folder,
    home,
    host,
    told,
    choose: [],
    shown,
    closed: 0,
    at: (...names) => join(folder, ...names),
    end: () => host.end(),
  };
  return rig;
}

/** The code of a refusal; the text `ok` for none. */
export function codeOf(result: Result<unknown>): string {
  return result.ok ? 'ok' : result.fault.code;
}

/** Puts the invitation's art at a path, its folder made where it is missing. */
export async function putSupper(path: string, drawnOn: Date = DRAWN_ON): Promise<void> {
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, await drawSupper(drawnOn));
}

/** Takes a file in as by dropping it. */
export async function drop(rig: HostRig, path: string): Promise<Art> {
  const dropped = granted(await rig.host.dropPath(path));
  if (dropped.is !== 'art') throw new Error(`${path} is no art`);
  return dropped.art;
}

/** The invitation's brief with this art on both faces. */
export function supperOf(art: ArtHandle, changes: object = {}): Brief {
  const faces = { front: { file: art, page: 1 }, back: { file: art, page: 2 } };
  return granted(readBrief(supperWith(changes, faces)));
}

/** A new invitation with its art at `art/supper.pdf`. */
export async function laySupper(rig: HostRig, changes: object = {}): Promise<OpenJob> {
  const path = rig.at('art', 'supper.pdf');
  await putSupper(path);
  const { art } = await drop(rig, path);
  return granted(await rig.host.handlers.job.lay({ brief: supperOf(art, changes) }));
}

/** An open invitation with its art at `art/supper.pdf`, as if it had been laid out and saved before. */
export async function openSupper(rig: HostRig): Promise<OpenJob> {
  const path = rig.at('art', 'supper.pdf');
  await putSupper(path);
  const brief = supperOf('art/supper.pdf' as ArtHandle);
  const sha256 = createHash('sha256').update(readFileSync(path)).digest('hex');
  const found = {
    piece: 'Supper',
    sha256,
    trim: { x: 9, y: 9, w: 360, h: 504 },
    said: 'The trim is its TrimBox.',
  };
  const job: Job = {
    schema: JOB_SCHEMA,
    brief,
    art: [
      { ...found, face: 'front' },
      { ...found, face: 'back' },
    ],
    arrangement: granted(layOutBrief(brief)).positions,
  };
  writeFileSync(rig.at('start.turnlay'), writeJob(job));
  return granted(await rig.host.handlers.job.open({ file: await chosen(rig, rig.at('start.turnlay')) }));
}

/** The handle of a file, as the shell's dialog would give it. */
export async function chosen(rig: HostRig, path: string): Promise<FileHandle> {
  rig.choose = [path];
  const choice = await rig.host.handlers.choose.files({ kind: 'job', many: false });
  if (choice.kind !== 'chosen' || choice.chosen[0] === undefined) throw new Error('Nothing was chosen');
  return choice.chosen[0].file;
}

/** Waits until the window has been told something of this kind that fits, or fails. Only what hangs takes longer. */
export async function heard<E extends EventName>(
  rig: HostRig,
  event: E,
  fits: (told: Events[E]) => boolean = () => true,
): Promise<Events[E]> {
  for (let waited = 0; waited < 100_000; waited += 20) {
    for (const told of rig.told) {
      if (told.event === event && fits(told.told as Events[E])) return told.told as Events[E];
    }
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`The window was never told ${event}; it heard ${JSON.stringify(rig.told)}`);
}
