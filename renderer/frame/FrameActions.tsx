// The actions that the frame itself offers, whatever stage is shown.
import { useActions } from '../actions/useActions.ts';
import { addArt } from '../desk/addArt.ts';
import { checkArt } from '../desk/artCheck.ts';
import { openLibrary } from '../desk/library.ts';
import { closeJob, openBrief, openJob, revertJob } from '../desk/opening.ts';
import { saveJob, saveJobAs } from '../desk/saving.ts';
import { cancelSending, proveOpenJob } from '../desk/sendings.ts';
import { changeSettings, chooseRipFolder } from '../desk/settings.ts';
import { startChangedBrief, startNewBrief } from '../desk/startBrief.ts';
import { isUnsaved } from '../state/deskState.ts';
import { redoName, undoName } from '../state/history.ts';
import { app, useApp } from '../state/store.ts';
import type { Stage } from '../state/viewState.ts';

export function FrameActions() {
  const hasJob = useApp((s) => s.history !== undefined && s.screen === 'job');
  const undo = useApp((s) => (s.screen === 'job' ? undoName(s.history) : undefined));
  const redo = useApp((s) => (s.screen === 'job' ? redoName(s.history) : undefined));
  const unsaved = useApp(isUnsaved);
  const saved = useApp((s) => s.file !== undefined);
  const sending = useApp((s) => s.sending?.state.at === 'under-way');
  const hasFolder = useApp((s) => s.settings.ripFolder !== undefined);
  const state = app.getState;

  const openDialog = (is: 'settings' | 'keys' | 'about') => () => state().openDialog({ is });
  const stage = (name: Stage) => ({ run: () => state().goTo(name), can: hasJob });
  useActions({
    'new-job': { run: () => void startNewBrief() },
    'open-job': { run: () => void openJob() },
    'open-brief': { run: () => void openBrief() },
    'add-art': { run: () => void addArt() },
    'save-job': { run: () => void saveJob(), can: hasJob && (unsaved || !saved) },
    'save-job-as': { run: () => void saveJobAs(), can: hasJob },
    'revert-job': { run: () => void revertJob(), can: hasJob && unsaved && saved },
    'change-brief': { run: () => void startChangedBrief(), can: hasJob },
    'check-art': { run: () => void checkArt(), can: hasJob },
    'send-job': { run: () => state().goTo('run'), can: hasJob },
    'stop-sending': { run: () => void cancelSending(), can: sending },
    'prove-sent': { run: prove, can: hasJob && hasFolder && !sending },
    'choose-rip-folder': { run: () => void chooseRipFolder() },
    'open-library': { run: () => openLibrary() },
    'open-settings': { run: openDialog('settings') },
    'close-job': { run: () => void closeJob(), can: hasJob },
    undo: { run: state().undo, can: undo !== undefined, label: undo && `Undo ${undo}` },
    redo: { run: state().redo, can: redo !== undefined, label: redo && `Redo ${redo}` },
    'lay-out': { run: () => void state().perform({ do: 'lay-out' }), can: hasJob },
    'stage-art': stage('art'),
    'stage-plan': stage('plan'),
    'stage-bench': stage('bench'),
    'stage-light-table': stage('light-table'),
    'stage-run': stage('run'),
    'switch-surround': { run: switchSurround },
    'show-keys': { run: openDialog('keys') },
    'show-about': { run: openDialog('about') },
  });
  return null;
}

/** The proof is shown where it was sent from. */
function prove(): void {
  const { history, goTo } = app.getState();
  if (history === undefined) return;
  goTo('run');
  void proveOpenJob(history.present);
}

function switchSurround(): void {
  const dark = document.documentElement.dataset.surround === 'dark';
  void changeSettings({ theme: dark ? 'light' : 'dark' });
}
