// Typing a count: a number and Enter, and why, where something was spoiled.
import { type ReactNode, useState } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import { Button } from '../../controls/Button.tsx';
import { Field } from '../../controls/Field.tsx';
import { FaultNote } from '../../controls/Note.tsx';
import { ReasonChoice } from './ReasonChoice.tsx';

interface CountFormProps {
  /** What is counted: `Good`. */
  readonly label: string;
  /** What the button says: `Count as good`. */
  readonly does: string;
  readonly hint?: string;
  /** What stands in the field at first. */
  readonly starts?: number | undefined;
  readonly reasons?: readonly string[];
  readonly main?: boolean;
  readonly onCount: (count: number, reason: string) => Promise<Fault | undefined>;
  readonly children?: ReactNode;
}

export function CountForm(props: CountFormProps) {
  const { label, does, hint, starts, reasons, main = false, onCount, children } = props;
  const first = starts === undefined || starts === 0 ? '' : String(starts);
  const [typed, setTyped] = useState(first);
  const [reason, setReason] = useState('');
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const send = async () => {
    const count = readCount(typed);
    const why = reason.trim();
    setFault(undefined);
    setWrong(count === undefined ? 'Type a whole number, 1 or more.' : undefined);
    if (count === undefined) return;
    if (reasons !== undefined && why === '') {
      setWrong('Say why they are spoiled.');
      return;
    }
    const refused = await onCount(count, why);
    setFault(refused);
    if (refused !== undefined) return;
    setTyped('');
    setReason('');
  };
  return (
    <form
      className="count-form"
      aria-label={label}
      onSubmit={(e) => {
        e.preventDefault();
        void send();
      }}
    >
      <div className="count-entry">
        <Field
          label={label}
          value={typed}
          size="some"
          onChange={(value) => {
            setTyped(value);
            setWrong(undefined);
          }}
          wrong={wrong}
          hint={hint}
          autoFocus={main}
        />
        {reasons === undefined ? null : (
          <ReasonChoice label="Why" reasons={reasons} reason={reason} onChange={setReason} />
        )}
        <div className="count-does">
          <Button kind={main ? 'main' : 'plain'} submits>
            {does}
          </Button>
          {children}
        </div>
      </div>
      {fault !== undefined && (
        <div role="alert">
          <FaultNote fault={fault} />
        </div>
      )}
    </form>
  );
}

/** A whole number of at least 1 as typed; nothing for anything else. */
function readCount(typed: string): number | undefined {
  const count = Number(typed.trim());
  return /^\d+$/.test(typed.trim()) && count > 0 ? count : undefined;
}
