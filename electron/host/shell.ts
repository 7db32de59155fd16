// What the host needs of the shell around it: dialogs, the title bar, closing. Each binding brings its own.
import type { Beginning, Shown } from '../../shared/contract/app.ts';
import type { FileKind } from '../../shared/contract/choosing.ts';

/** Paths that were chosen; none when cancelled, `no-dialog` where the shell has none. */
export type ChosenPaths = readonly string[] | 'no-dialog';

export interface Shell {
  readonly kind: Beginning['shell'];
  chooseFiles(kind: FileKind, many: boolean): Promise<ChosenPaths>;
  chooseNewFile(name: string): Promise<ChosenPaths>;
  chooseFolder(title: string): Promise<ChosenPaths>;
  show(shown: Shown): void;
  close(): void;
}
