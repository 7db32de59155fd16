// Settings as they are changed: the host remembers them, the window follows.
import type { FolderEntry } from '../../shared/contract/handles.ts';
import type { SettingsChange } from '../../shared/contract/settings.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { chooseFolder } from './choose.ts';

/** The change that was begun last, and those before it. */
let remembering: Promise<void> = Promise.resolve();

/** Changes and remembers; what cannot be set is told. */
export function changeSettings(change: SettingsChange): Promise<void> {
  const changed = remembering.then(() => remember(change));
  remembering = changed.catch(() => undefined);
  return changed;
}

async function remember(change: SettingsChange): Promise<void> {
  const changed = await host.settings.change(change);
  if (changed.ok) app.setState({ settings: changed.value });
  else app.getState().report(changed.fault);
}

/** The folder that the RIP looks into, once the host has remembered what was chosen; none where none is chosen. */
export async function rememberedRipFolder(): Promise<FolderEntry | undefined> {
  await remembering;
  return app.getState().settings.ripFolder;
}

/** Asks for the folder that the RIP looks into, and remembers it. Says whether one was chosen. */
export async function chooseRipFolder(): Promise<boolean> {
  const folder = await chooseFolder('The folder that the RIP looks into');
  if (folder === undefined) return false;
  await changeSettings({ ripFolder: folder.folder });
  return true;
}
