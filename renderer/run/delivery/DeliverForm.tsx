// The next delivery: how many of each design go to the customer.
import { useState } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import type { DeliveryLine } from '../../../shared/run/delivery.ts';
import { Button } from '../../controls/Button.tsx';
import { Field } from '../../controls/Field.tsx';
import { FaultNote, Note } from '../../controls/Note.tsx';
import { record } from '../../desk/runs.ts';

export function DeliverForm({ lines }: { readonly lines: readonly DeliveryLine[] }) {
  const inHouse = lines.filter((l) => l.inHouse > 0);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>(
    Object.fromEntries(inHouse.map((l) => [l.piece, String(l.due)])),
  );
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const pieces = inHouse.map(({ piece }) => ({ piece, pieces: Number(typed[piece]?.trim() || 0) }));
  const readable = pieces.every((p) => Number.isInteger(p.pieces) && p.pieces >= 0);
  const some = pieces.filter((p) => p.pieces > 0);
  if (inHouse.length === 0) {
    return (
      <Note tone="know">No good pieces are in stock. They are counted as they come from the knife.</Note>
    );
  }
  return (
    <form
      className="delivery-form"
      aria-label="Next delivery"
      onSubmit={async (e) => {
        e.preventDefault();
        if (readable && some.length > 0) setFault(await record({ kind: 'delivered', pieces: some }));
      }}
    >
      {inHouse.map(({ piece, inHouse: there }) => (
        <Field
          key={piece}
          label={`${piece} to deliver`}
          size="some"
          value={typed[piece] ?? ''}
          hint={`${there} in stock`}
          wrong={readable ? undefined : 'Type whole numbers.'}
          onChange={(value) => setTyped({ ...typed, [piece]: value })}
        />
      ))}
      <Button kind="main" submits disabled={!readable || some.length === 0}>
        Delivered
      </Button>
      {fault !== undefined && (
        <div role="alert">
          <FaultNote fault={fault} />
        </div>
      )}
    </form>
  );
}
