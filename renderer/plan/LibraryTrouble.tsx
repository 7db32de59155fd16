// Says on Plan that the person's own printers and papers could not be used, and that examples stand in for them.
import { Button } from '../controls/Button.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { app, useApp } from '../state/store.ts';

export function LibraryTrouble() {
  const trouble = useApp((s) => s.troubles.find(({ file }) => file === 'library'));
  if (trouble === undefined) return null;
  const message = `${trouble.fault.message} This plan reckons with example printers and papers.`;
  return (
    <div className="trouble">
      <FaultNote fault={{ ...trouble.fault, message }} />
      <Button onPress={() => app.getState().openDialog({ is: 'file-troubles' })}>Your files…</Button>
    </div>
  );
}
