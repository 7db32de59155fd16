// Saving the job, and what is asked before it is put away.
import type { FileHandle } from '../../shared/contract/handles.ts';
import type { Fault } from '../../shared/fault/result.ts';
import { host } from '../hostClient/host.ts';
import { isUnsaved } from '../state/deskState.ts';
import { app } from '../state/store.ts';
import { ask } from './ask.ts';
import { chooseNewFile } from './choose.ts';

/** Saves the job in its file, or asks for one. Says whether it is saved now. */
export async function saveJob(): Promise<boolean> {
  const { file } = app.getState();
  return file === undefined ? saveJobAs() : save(file.file, false);
}

/** Saves the job in a file that is asked for. */
export async function saveJobAs(): Promise<boolean> {
  const { history, file } = app.getState();
  if (history === undefined) return false;
  const place = await chooseNewFile(file?.name ?? history.present.brief.title);
  return place === undefined ? false : save(place.file, false);
}

/** Whether the job may be put away: it is saved, or was saved now, or may be lost. */
export async function mayPutAway(): Promise<boolean> {
  const { history } = app.getState();
  if (history === undefined || !isUnsaved(app.getState())) return true;
  const answer = await ask({
    title: 'Save the job first?',
    says: `“${history.present.brief.title}” has changes that are not saved.`,
    answers: [
      { is: 'stay', label: 'Go back' },
      { is: 'lose', label: 'Do not save' },
      { is: 'save', label: 'Save' },
    ],
    urgent: true,
  });
  return answer === 'lose' || (answer === 'save' && (await saveJob()));
}

async function save(file: FileHandle, replace: boolean): Promise<boolean> {
  const { history, report, settleSaved, say } = app.getState();
  if (history === undefined) return false;
  const saved = await host.job.save({ file, job: history.present, replace });
  if (saved.ok) {
    settleSaved(saved.value.file, saved.value.job);
    say(`Saved in ${saved.value.file.name}.`);
    app.setState({ recents: await host.recents.list() });
    return true;
  }
  if (replace || !MAY_REPLACE.has(saved.fault.code)) {
    report(saved.fault);
    return false;
  }
  const answer = await ask({
    title: 'Replace the file?',
    says: `${saved.fault.message} What stands in it now would be lost.`,
    answers: [
      { is: 'stay', label: 'Go back' },
      { is: 'other', label: 'Save elsewhere' },
      { is: 'replace', label: 'Replace it' },
    ],
    urgent: true,
  });
  if (answer === 'other') return saveJobAs();
  return answer === 'replace' && save(file, true);
}

const MAY_REPLACE: ReadonlySet<Fault['code']> = new Set(['file-exists', 'file-changed']);
