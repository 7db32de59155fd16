// The program behind the window has ended: nothing can be saved here any more, and nothing is lost.
import { Dialog } from '../controls/Dialog.tsx';
import { useApp } from '../state/store.ts';

export function HostGoneDialog() {
  const hasJob = useApp((s) => s.history !== undefined);
  return (
    <Dialog title="The program has ended" width="narrow" urgent onClose={() => undefined}>
      <p>This window can no longer save, look through art, or send. Start Turnlay again.</p>
      {hasJob && <p>The job was kept as you last changed it and is offered when the program starts.</p>}
    </Dialog>
  );
}
