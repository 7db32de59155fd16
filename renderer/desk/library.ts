// The library of printers and papers: shown, kept by the host when it is changed, read from files and written for others.
import type { FileEntry } from '../../shared/contract/handles.ts';
import { type Fault, ok, type Result } from '../../shared/fault/result.ts';
import type { Library } from '../../shared/library/library.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { ask } from './ask.ts';
import { chooseFiles, chooseFolder } from './choose.ts';

/** Shows the printers and papers, beginning with the printer of this name if there is one. */
export function openLibrary(printer?: string): void {
  const { dialogs, openDialog } = app.getState();
  if (dialogs.every((dialog) => dialog.is !== 'library')) openDialog({ is: 'library', printer });
}

/** Has a changed library kept. Answers with what went wrong, if anything did. */
export async function keepLibrary(library: Library): Promise<Fault | undefined> {
  const kept = await host.library.change({ library });
  if (!kept.ok) return kept.fault;
  app.setState({ library: kept.value });
  app.getState().settleTrouble('library');
  return undefined;
}

/** A library read from a file that is asked for, with its name; none where the choosing was cancelled. */
export async function readChosenLibrary(): Promise<
  Result<{ readonly library: Library; readonly name: string }> | undefined
> {
  const [file] = await chooseFiles('library', false);
  if (file === undefined) return undefined;
  const read = await host.library.import({ file: file.file });
  return read.ok ? ok({ library: read.value, name: file.name }) : read;
}

/** The name that an exported library is given. */
const EXPORTED = 'Printers and papers.json';

/** Writes the kept library into a folder that is asked for; none where the choosing was cancelled. */
export async function exportLibrary(): Promise<Result<FileEntry> | undefined> {
  const folder = await chooseFolder('The folder to write the printers and papers into');
  if (folder === undefined) return undefined;
  const asking = { folder: folder.folder, name: EXPORTED };
  const written = await host.library.export(asking);
  if (written.ok || written.fault.code !== 'file-exists') return written;
  const answer = await ask({
    title: 'Replace the file?',
    says: `${written.fault.message} What stands in it now would be lost.`,
    answers: [
      { is: 'stay', label: 'Go back' },
      { is: 'replace', label: 'Replace it' },
    ],
    urgent: true,
  });
  return answer === 'replace' ? host.library.export({ ...asking, replace: true }) : undefined;
}
