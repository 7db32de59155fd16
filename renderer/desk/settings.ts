// Settings as they are changed: the host remembers them, the window follows.
import type { SettingsChange } from '../../shared/contract/settings.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { chooseFolder } from './choose.ts';

/** Changes and remembers; what cannot be set is told. */
export async function changeSettings(change: SettingsChange): Promise<void> {
  const changed = await host.settings.change(change);
  if (changed.ok) app.setState({ settings: changed.value });
  else app.getState().report(changed.fault);
}

/** Asks for the folder that the RIP looks into, and remembers it. Says whether one was chosen. */
export async function chooseRipFolder(): Promise<boolean> {
  const folder = await chooseFolder('The folder that the RIP looks into');
  if (folder === undefined) return false;
  await changeSettings({ ripFolder: folder.folder });
  return true;
}
