// Art that comes into the window: chosen or dropped, looked through, and made into the draft of a brief.
import type { Art } from '../../shared/contract/art.ts';
import type { FileEntry } from '../../shared/contract/handles.ts';
import type { DroppedFile } from '../../shared/contract/host.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { chooseFiles } from './choose.ts';
import { finishLooking } from './finishLooking.ts';
import { openJob } from './opening.ts';
import { startBriefFromArt } from './startBrief.ts';

/** Asks for PDFs and begins with them. */
export async function addArt(): Promise<void> {
  const chosen = await chooseFiles('art', true);
  if (chosen.length > 0) await takeIn(chosen);
}

async function takeIn(files: readonly FileEntry[]): Promise<void> {
  const arts: Art[] = [];
  for (const { file, name } of files) {
    app.getState().say(`Looking through ${name}.`);
    const taken = await host.art.takeIn({ file });
    if (taken.ok) arts.push(taken.value);
    else app.getState().report(taken.fault);
  }
  await beginWith(arts);
}

/** Takes in what was dropped: art becomes a draft, a job is opened. What cannot be used is told, and the rest goes on. */
export async function takeDropped(files: readonly DroppedFile[]): Promise<void> {
  const arts: Art[] = [];
  app.getState().putFaultAway();
  for (const file of files) {
    app.getState().say(`Looking through ${file.name}.`);
    const dropped = await host.dropped(file);
    if (!dropped.ok) app.getState().report(dropped.fault);
    else if (dropped.value.is === 'job') return openJob(dropped.value.file);
    else arts.push(dropped.value.art);
  }
  await beginWith(arts);
}

/** Proposes pieces first; what is still being looked through in the files is told when it is known. */
async function beginWith(arts: readonly Art[]): Promise<void> {
  if (arts.length === 0) return;
  await startBriefFromArt(arts);
  for (const art of arts) void finishLooking(art);
}
