// The foot of the library: whether all is saved, undoing, files, and leaving.
import { useState } from 'react';
import { useStore } from 'zustand';
import type { Fault } from '../../shared/fault/result.ts';
import { Button } from '../controls/Button.tsx';
import { FaultNote, Note } from '../controls/Note.tsx';
import { exportLibrary, readChosenLibrary } from '../desk/library.ts';
import { redoName, undoName } from '../state/history.ts';
import type { Editor } from './editor.ts';
import { takeIn } from './takeIn.ts';

interface LibraryFootProps {
  readonly editor: Editor;
  readonly onDone: () => void;
}

export function LibraryFoot({ editor, onDone }: LibraryFootProps) {
  const { editing, unsaved } = useStore(editor.state);
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const [done, setDone] = useState<string | undefined>(undefined);
  const { history, wrongs } = editing;
  const [undo, redo] = [undoName(history), redoName(history)];
  const tell = (said: string | undefined, wrong: Fault | undefined) => {
    setDone(said);
    setFault(wrong);
  };
  const imports = async () => {
    const read = await readChosenLibrary();
    if (read === undefined) return;
    if (!read.ok) return tell(undefined, read.fault);
    const took = await takeIn(editor, read.value);
    if (took) tell(`${read.value.name} was taken in.`, undefined);
  };
  const exports = async () => {
    const written = await exportLibrary();
    if (written === undefined) return;
    if (written.ok) tell(`Written: ${written.value.place}/${written.value.name}.`, undefined);
    else tell(undefined, written.fault);
  };
  return (
    <footer className="library-foot">
      <div className="library-says" role="status">
        {fault !== undefined && <FaultNote fault={fault} />}
        {unsaved !== undefined && <FaultNote fault={unsaved} />}
        <Saved wrong={Object.keys(wrongs).length} saved={unsaved === undefined} done={done} />
      </div>
      <Button
        kind="quiet"
        disabled={undo === undefined}
        label={undo === undefined ? 'Undo' : `Undo ${undo}`}
        onPress={editor.undo}
      >
        Undo
      </Button>
      <Button
        kind="quiet"
        disabled={redo === undefined}
        label={redo === undefined ? 'Redo' : `Redo ${redo}`}
        onPress={editor.redo}
      >
        Redo
      </Button>
      <Button onPress={() => void imports()}>Import…</Button>
      <Button onPress={() => void exports()}>Export…</Button>
      <Button kind="main" onPress={onDone}>
        Done
      </Button>
    </footer>
  );
}

function Saved({
  wrong,
  saved,
  done,
}: {
  readonly wrong: number;
  readonly saved: boolean;
  readonly done: string | undefined;
}) {
  if (wrong > 0) {
    const fields = wrong === 1 ? 'One field is' : `${wrong} fields are`;
    return (
      <Note tone="ask">
        {fields} still to be set right. Until then a printer or paper with such a field is kept as it was; all
        else is saved.
      </Note>
    );
  }
  if (!saved) return null;
  return <Note tone="good">{done ?? 'Changes are saved as they are made.'}</Note>;
}
