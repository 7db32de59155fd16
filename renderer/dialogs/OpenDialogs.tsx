// The dialogs that lie over the window, the newest on top.
import { LibraryDialog } from '../library/LibraryDialog.tsx';
import type { DialogShown } from '../state/dialogs.ts';
import { useApp } from '../state/store.ts';
import { AboutDialog } from './AboutDialog.tsx';
import { ChooserDialog } from './ChooserDialog.tsx';
import { FileTroublesDialog } from './FileTroublesDialog.tsx';
import { HostGoneDialog } from './HostGoneDialog.tsx';
import { KeysDialog } from './KeysDialog.tsx';
import { LeftBehindDialog } from './LeftBehindDialog.tsx';
import { QuestionDialog } from './QuestionDialog.tsx';
import { SettingsDialog } from './SettingsDialog.tsx';
import './dialogs.css';

export function OpenDialogs() {
  const dialogs = useApp((s) => s.dialogs);
  // biome-ignore lint/suspicious/noArrayIndexKey: a dialog is its place in the pile.
  return dialogs.map((dialog, i) => <Shown key={`${dialog.is} ${i}`} dialog={dialog} />);
}

function Shown({ dialog }: { readonly dialog: DialogShown }) {
  const closeDialog = useApp((s) => s.closeDialog);
  const close = () => closeDialog(dialog);
  switch (dialog.is) {
    case 'settings':
      return <SettingsDialog onClose={close} />;
    case 'library':
      return <LibraryDialog printer={dialog.printer} onClose={close} />;
    case 'keys':
      return <KeysDialog onClose={close} />;
    case 'about':
      return <AboutDialog onClose={close} />;
    case 'file-troubles':
      return <FileTroublesDialog onClose={close} />;
    case 'left-behind':
      return <LeftBehindDialog onClose={close} />;
    case 'host-gone':
      return <HostGoneDialog />;
    case 'question':
      return <QuestionDialog question={dialog.question} answer={dialog.answer} />;
    case 'chooser':
      return <ChooserDialog looking={dialog.looking} choose={dialog.choose} />;
  }
}
