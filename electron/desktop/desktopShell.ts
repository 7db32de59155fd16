// What the desktop gives the host: the dialogs of the system, the title bar and the menu.
import { extname } from 'node:path';
import { type BrowserWindow, dialog, type FileFilter } from 'electron';
import type { ActionName } from '../../shared/contract/actions.ts';
import type { FileKind } from '../../shared/contract/choosing.ts';
import { ART_ENDING, JOB_ENDING } from '../disk/endings.ts';
import type { Shell } from '../host/shell.ts';
import { showMenu } from './menu.ts';

const FILTERS: Readonly<Record<FileKind, FileFilter>> = {
  job: { name: 'Turnlay jobs', extensions: [JOB_ENDING.slice(1)] },
  art: { name: 'Art (PDF)', extensions: [ART_ENDING.slice(1)] },
  brief: { name: 'Briefs (JSON)', extensions: ['json'] },
  library: { name: 'Libraries (JSON)', extensions: ['json'] },
};

/** The shell of this window. `choose` is told what is picked in the menu, `close` closes the window for good. */
export function desktopShell(
  window: () => BrowserWindow,
  choose: (action: ActionName) => void,
  close: () => void,
): Shell {
  return {
    kind: 'desktop',
    async chooseFiles(kind, many) {
      const { canceled, filePaths } = await dialog.showOpenDialog(window(), {
        filters: [FILTERS[kind]],
        properties: many ? ['openFile', 'multiSelections'] : ['openFile'],
      });
      return canceled ? [] : filePaths;
    },
    async chooseNewFile(name) {
      const { canceled, filePath } = await dialog.showSaveDialog(window(), {
        defaultPath: withEnding(name),
        filters: [FILTERS.job],
        properties: ['createDirectory', 'showOverwriteConfirmation'],
      });
      return canceled ? [] : [withEnding(filePath)];
    },
    async chooseFolder(title) {
      const { canceled, filePaths } = await dialog.showOpenDialog(window(), {
        title,
        properties: ['openDirectory', 'createDirectory'],
      });
      return canceled ? [] : filePaths;
    },
    show(shown) {
      const title = shown.title === '' ? 'Turnlay' : `${shown.title} – Turnlay`;
      window().setTitle(shown.unsaved ? `• ${title}` : title);
      window().setDocumentEdited(shown.unsaved);
      showMenu(shown, process.platform === 'darwin', choose);
    },
    close,
  };
}

const withEnding = (name: string) =>
  extname(name).toLowerCase() === JOB_ENDING ? name : `${name}${JOB_ENDING}`;
