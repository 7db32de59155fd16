// The deliveries so far, each with its packing slip.
import { useState } from 'react';
import type { FileEntry } from '../../../shared/contract/handles.ts';
import { nameOfEvent } from '../../../shared/run/events.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { deliveriesOf } from '../../../shared/run/slip.ts';
import { Button } from '../../controls/Button.tsx';
import { Note } from '../../controls/Note.tsx';
import { savePackingSlip, undoLastCount } from '../../desk/runs.ts';
import { showDayAndTime } from '../../desk/showDate.ts';

export function Deliveries({ run }: { readonly run: PrintRun }) {
  const [written, setWritten] = useState<FileEntry | undefined>(undefined);
  const deliveries = deliveriesOf(run);
  if (deliveries.length === 0) return null;
  return (
    <section className="read-panel run-panel" aria-label="Deliveries">
      <h3>Deliveries</h3>
      <ol className="deliveries">
        {deliveries.map(({ id, at, event }, i) => {
          const name = nameOfEvent(event);
          return (
            <li key={id}>
              <time dateTime={at}>{showDayAndTime(at)}</time>
              <span>{name}</span>
              <Button
                label={`Packing slip of delivery ${i + 1}`}
                onPress={async () => setWritten(await savePackingSlip(id))}
              >
                Packing slip
              </Button>
              <Button kind="quiet" label={`Take back “${name}”`} onPress={() => void undoLastCount(id, name)}>
                Take back
              </Button>
            </li>
          );
        })}
      </ol>
      <div aria-live="polite">
        {written !== undefined && (
          <Note tone="good">
            {written.name} is in {written.place}. Print it on plain paper and put it into the parcel.
          </Note>
        )}
      </div>
    </section>
  );
}
