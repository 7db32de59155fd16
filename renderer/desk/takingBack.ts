// Putting right what was wrong with the program's own files: the last good copy takes the place of a damaged one.
import type { FileTrouble } from '../../shared/contract/ownFiles.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';

/** Takes the copy back; the trouble is over then. Refuses as the host does. */
export async function takeCopyBack({ file }: FileTrouble): Promise<Result<null>> {
  const taken = await (file === 'library' ? takeLibraryBack() : takeSettingsBack());
  if (taken.ok) app.setState({ troubles: app.getState().troubles.filter((other) => other.file !== file) });
  return taken;
}

async function takeLibraryBack(): Promise<Result<null>> {
  const library = await host.library.takeBack();
  if (!library.ok) return library;
  app.setState({ library: library.value });
  return ok(null);
}

async function takeSettingsBack(): Promise<Result<null>> {
  const settings = await host.settings.takeBack();
  if (!settings.ok) return settings;
  app.setState({ settings: settings.value });
  return ok(null);
}
