// What the program is, what it runs on here, and whose work it holds under which licences.

import { Button } from '../controls/Button.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { Logo } from '../controls/Logo.tsx';
import { useApp } from '../state/store.ts';
import { OthersWork } from './OthersWork.tsx';

export function AboutDialog({ onClose }: { readonly onClose: () => void }) {
  const begun = useApp((s) => s.begun);
  if (begun === undefined) return null;
  return (
    <Dialog title="Turnlay" onClose={onClose}>
      <div className="about">
        <Logo />
        <div>
          <p>
            Lays out, proves and sends two-sided jobs on cut sheets, so that every back lands behind its own
            front.
          </p>
          <p className="soft">
            Version {begun.version}, on {begun.runsOn.join(', ')}. Free to use, change and share under the MIT
            licence.
          </p>
        </div>
      </div>
      <OthersWork shell={begun.shell} />
      <DialogAnswers>
        <Button kind="main" onPress={onClose}>
          Done
        </Button>
      </DialogAnswers>
    </Dialog>
  );
}
