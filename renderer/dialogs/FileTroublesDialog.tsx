// Own files of the program that could not be used as they lay: what is wrong, and a damaged one taken back from its copy.
import { useEffect, useState } from 'react';
import type { CopiedFile } from '../../shared/contract/ownFiles.ts';
import type { Fault } from '../../shared/fault/result.ts';
import { Button } from '../controls/Button.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { showDayAndTime } from '../desk/showDate.ts';
import { takeCopyBack } from '../desk/takingBack.ts';
import { useApp } from '../state/store.ts';

export function FileTroublesDialog({ onClose }: { readonly onClose: () => void }) {
  const troubles = useApp((s) => s.troubles);
  const [refused, setRefused] = useState<Fault>();
  const none = troubles.length === 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it closes once when the last is put right.
  useEffect(() => {
    if (none) onClose();
  }, [none]);
  const takeBack = async (file: CopiedFile) => setRefused(await takeCopyBack(file));
  return (
    <Dialog title="Your files" onClose={onClose}>
      {troubles.map((trouble) => (
        <div key={trouble.file} className="trouble">
          <FaultNote fault={trouble.fault} />
          {trouble.copyOf !== undefined && (
            <Button kind="main" onPress={() => void takeBack(trouble.file)}>
              Take the copy of {showDayAndTime(trouble.copyOf)} back
            </Button>
          )}
        </div>
      ))}
      {refused !== undefined && <FaultNote fault={refused} />}
      <DialogAnswers>
        <Button onPress={onClose}>Go on as it is</Button>
      </DialogAnswers>
    </Dialog>
  );
}
