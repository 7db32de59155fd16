// What only the printer's counter and the clock on the wall know of a run: its ink, and the minutes that somebody stood there.
import { useState } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import { measuredOf } from '../../../shared/run/impressions.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { Button } from '../../controls/Button.tsx';
import { Field } from '../../controls/Field.tsx';
import { FaultNote } from '../../controls/Note.tsx';
import { record } from '../../desk/runs.ts';

export function MeasuredForm({ run }: { readonly run: PrintRun }) {
  const known = measuredOf(run);
  const [ink, setInk] = useState(shown(known.ink));
  const [minutes, setMinutes] = useState(shown(known.minutes));
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const [inkRead, minutesRead] = [readAmount(ink), readAmount(minutes)];
  const wrong = (read: number | undefined | 'wrong') =>
    read === 'wrong' ? 'Type a number above 0.' : undefined;
  const readable = inkRead !== 'wrong' && minutesRead !== 'wrong';
  const changed = readable && (inkRead !== known.ink || minutesRead !== known.minutes);
  const any = inkRead !== undefined || minutesRead !== undefined;
  return (
    <form
      className="delivery-form"
      aria-label="Measured"
      onSubmit={async (e) => {
        e.preventDefault();
        if (!readable || !any) return;
        setFault(await record({ kind: 'measured', ink: inkRead, minutes: minutesRead }));
      }}
    >
      <Field
        label="Ink by the counter, ml"
        size="some"
        value={ink}
        hint="all inks together"
        wrong={wrong(inkRead)}
        onChange={setInk}
      />
      <Field
        label="Minutes at the printer"
        size="some"
        value={minutes}
        hint="with setting up"
        wrong={wrong(minutesRead)}
        onChange={setMinutes}
      />
      <Button submits disabled={!changed || !any}>
        Note what was measured
      </Button>
      {fault !== undefined && (
        <div role="alert">
          <FaultNote fault={fault} />
        </div>
      )}
    </form>
  );
}

function shown(amount: number | undefined): string {
  return amount === undefined ? '' : String(amount);
}

/** A typed amount; nothing where the field is empty. */
function readAmount(typed: string): number | undefined | 'wrong' {
  const text = typed.trim().replace(',', '.');
  if (text === '') return undefined;
  const amount = Number(text);
  return Number.isFinite(amount) && amount > 0 ? amount : 'wrong';
}
