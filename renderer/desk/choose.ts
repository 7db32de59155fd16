// Choosing files and folders: with the dialog of the system where there is one, else in the window's own chooser.
import type { ChooserAnswer, FileKind } from '../../shared/contract/choosing.ts';
import type { FileEntry, FolderEntry } from '../../shared/contract/handles.ts';
import { host } from '../hostClient/host.ts';
import type { ChooserTarget, ChosenFiles } from '../state/dialogs.ts';
import { app } from '../state/store.ts';

/** The chosen files; none when it was cancelled. */
export async function chooseFiles(kind: FileKind, many: boolean): Promise<readonly FileEntry[]> {
  const looking = { for: 'files', kind, many } as const;
  const chosen = await either(await host.choose.files({ kind, many }), looking);
  return Array.isArray(chosen) ? (chosen as readonly FileEntry[]) : [];
}

/** A place for a new job file, if one was chosen. */
export async function chooseNewFile(name: string): Promise<FileEntry | undefined> {
  const chosen = await either(await host.choose.newFile({ name }), { for: 'new-file', name });
  return Array.isArray(chosen) ? chosen[0] : (chosen as FileEntry | undefined);
}

/** The chosen folder, if one was chosen. */
export async function chooseFolder(title: string): Promise<FolderEntry | undefined> {
  return (await either(await host.choose.folder({ title }), { for: 'folder', title })) as
    | FolderEntry
    | undefined;
}

async function either<T>(choice: ChooserAnswer<T>, looking: ChooserTarget): Promise<T | ChosenFiles> {
  switch (choice.kind) {
    case 'chosen':
      return choice.chosen;
    case 'cancelled':
      return undefined;
    case 'no-dialog':
      return lookForIt(looking);
  }
}

function lookForIt(looking: ChooserTarget): Promise<ChosenFiles> {
  return new Promise((resolve) => {
    const dialog = {
      is: 'chooser' as const,
      looking,
      choose: (chosen: ChosenFiles) => {
        app.getState().closeDialog(dialog);
        resolve(chosen);
      },
    };
    app.getState().openDialog(dialog);
  });
}
