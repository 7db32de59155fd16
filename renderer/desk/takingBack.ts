// Putting right what was wrong with the program's own files: the last good copy takes the place of a damaged one.
import type { CopiedFile } from '../../shared/contract/ownFiles.ts';
import type { Fault } from '../../shared/fault/result.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';

/** Takes the copy back and shows what it holds. Answers with what went wrong, if anything did. */
export async function takeCopyBack(file: CopiedFile): Promise<Fault | undefined> {
  const fault = await (file === 'library' ? takeLibraryBack() : takeSettingsBack());
  if (fault === undefined) app.getState().settleTrouble(file);
  return fault;
}

async function takeLibraryBack(): Promise<Fault | undefined> {
  const taken = await host.library.takeBack();
  if (!taken.ok) return taken.fault;
  app.setState({ library: taken.value });
  return undefined;
}

async function takeSettingsBack(): Promise<Fault | undefined> {
  const taken = await host.settings.takeBack();
  if (!taken.ok) return taken.fault;
  app.setState({ settings: taken.value });
  return undefined;
}
