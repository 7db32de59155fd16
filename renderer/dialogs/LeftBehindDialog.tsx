// Jobs that were left unsaved when the program ended: each can be taken up or let go.
import { useEffect } from 'react';
import type { UnsavedJob } from '../../shared/contract/openJob.ts';
import { Button } from '../controls/Button.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { ask } from '../desk/ask.ts';
import { discardUnsaved, takeUp } from '../desk/opening.ts';
import { mayPutAway } from '../desk/saving.ts';
import { showDayAndTime } from '../desk/showDate.ts';
import { useApp } from '../state/store.ts';

export function LeftBehindDialog({ onClose }: { readonly onClose: () => void }) {
  const kept = useApp((s) => s.kept);
  const none = kept.length === 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it closes once when the last is gone.
  useEffect(() => {
    if (none) onClose();
  }, [none]);
  const takeThis = async (job: UnsavedJob) => {
    if (!(await mayPutAway())) return;
    onClose();
    await takeUp(job.kept);
  };
  return (
    <Dialog title="Left unsaved" onClose={onClose}>
      <p>The program ended before these were saved. Nothing of them is lost.</p>
      <ul className="kept">
        {kept.map((job) => (
          <li key={job.kept}>
            <div className="kept-job">
              <strong>{job.title}</strong>
              <span className="soft">
                {job.file === undefined ? 'never saved' : `${job.file.place}/${job.file.name}`}, kept{' '}
                {showDayAndTime(job.at)}
              </span>
            </div>
            <Button label={`Throw away ${job.title}`} onPress={() => void throwAway(job)}>
              Throw away
            </Button>
            <Button kind="main" label={`Go on with ${job.title}`} onPress={() => void takeThis(job)}>
              Go on with it
            </Button>
          </li>
        ))}
      </ul>
      <DialogAnswers>
        <Button onPress={onClose}>Later</Button>
      </DialogAnswers>
    </Dialog>
  );
}

async function throwAway({ kept, title }: UnsavedJob): Promise<void> {
  const answer = await ask({
    title: 'Throw it away?',
    says: `What was kept of “${title}” is lost for good.`,
    answers: [
      { is: 'stay', label: 'Keep it' },
      { is: 'throw', label: 'Throw it away' },
    ],
    urgent: true,
  });
  if (answer === 'throw') await discardUnsaved(kept);
}
