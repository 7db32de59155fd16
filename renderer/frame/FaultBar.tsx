// What has gone wrong, in a sentence, with what to do about it, until it is put away or the next thing works.
import { Button } from '../controls/Button.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { useApp } from '../state/store.ts';

export function FaultBar() {
  const fault = useApp((s) => s.fault);
  const putAway = useApp((s) => s.putFaultAway);
  return (
    <div role="alert" className="fault-place">
      {fault === undefined ? null : (
        <div className="fault-bar">
          <FaultNote fault={fault} />
          <Button kind="quiet" onPress={putAway}>
            Dismiss
          </Button>
        </div>
      )}
    </div>
  );
}
