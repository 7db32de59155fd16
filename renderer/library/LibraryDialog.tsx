// The printers and papers of the studio: a list of them at the left, what is chosen at the right.
import { useState } from 'react';
import { useStore } from 'zustand';
import { Dialog } from '../controls/Dialog.tsx';
import { ask } from '../desk/ask.ts';
import { keepLibrary } from '../desk/library.ts';
import { app } from '../state/store.ts';
import { EntryList } from './EntryList.tsx';
import { type Editor, openEditor } from './editor.ts';
import { LibraryEntryForm } from './LibraryEntryForm.tsx';
import { LibraryFoot } from './LibraryFoot.tsx';
import { useEditorKeys } from './useEditorKeys.ts';
import './library.css';

interface LibraryBoxProps {
  /** The name of the printer to begin with. */
  readonly printer: string | undefined;
  readonly onClose: () => void;
}

export function LibraryDialog({ printer, onClose }: LibraryBoxProps) {
  const [editor] = useState(() => openEditor(app.getState().library, keepLibrary, printer));
  const { editing } = useStore(editor.state);
  useEditorKeys(editor);
  const close = async () => {
    editor.settle();
    if (await mayClose(editor)) onClose();
  };
  return (
    <Dialog title="Printers and papers" width="whole" onClose={() => void close()}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it only hears what the fields inside it do. */}
      <div
        className="library"
        onBlur={editor.settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && event.target instanceof HTMLInputElement) editor.settle();
        }}
      >
        <EntryList editor={editor} editing={editing} />
        <LibraryEntryForm editor={editor} editing={editing} />
        <LibraryFoot editor={editor} onDone={() => void close()} />
      </div>
    </Dialog>
  );
}

/** Whether the editor may be closed: nothing stands in it that would be lost, or the person agrees. */
async function mayClose({ state }: Editor): Promise<boolean> {
  const { editing, unsaved } = state.getState();
  const wrong = Object.keys(editing.wrongs).length > 0;
  const started = editing.typed.printers.some(({ key }) => editing.started[key] !== undefined);
  if (!wrong && !started && unsaved === undefined) return true;
  const lost = [
    ...(wrong ? ['Fields that are still to be set right stay as they were before.'] : []),
    ...(started ? ['A reading that was not added yet is given up.'] : []),
    ...(unsaved === undefined ? [] : [`What was changed is not saved: ${unsaved.message}`]),
  ];
  const answer = await ask({
    title: 'Leave it unfinished?',
    says: lost.join(' '),
    answers: [
      { is: 'stay', label: 'Go on with it' },
      { is: 'leave', label: 'Leave it' },
    ],
    urgent: true,
  });
  return answer === 'leave';
}
