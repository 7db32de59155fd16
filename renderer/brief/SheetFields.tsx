// The sheet: its size, what the printer leaves unprinted, and how the printer holds it.

import { Field } from '../controls/Field.tsx';
import { HoldFields } from '../controls/HoldFields.tsx';
import { Tick } from '../controls/Tick.tsx';
import { SHEET_EDGES } from '../draft/sheetEdges.ts';
import type { PartProps } from './partProps.ts';

export function SheetFields({ draft, change, wrongs }: PartProps) {
  const { unprintable, hold } = draft;
  return (
    <section className="brief-part" aria-label="Sheet">
      <h3>Sheet</h3>
      <div className="fields">
        <Field
          label="Across the feed x along it"
          size="some"
          value={draft.sheet}
          onChange={(sheet) => change({ sheet })}
          wrong={wrongs['sheet.size']}
        />
        {SHEET_EDGES.map(({ edge, label }) => (
          <Field
            key={edge}
            label={label}
            size="few"
            value={unprintable[edge]}
            onChange={(typed) => change({ unprintable: { ...unprintable, [edge]: typed } })}
            wrong={wrongs[`sheet.unprintable.${edge}`]}
          />
        ))}
      </div>
      <div className="fields">
        <HoldFields hold={hold} onChange={(held) => change({ hold: held })} />
        <Tick
          label="Both sides of the paper are alike"
          on={draft.sidesAlike}
          onChange={(sidesAlike) => change({ sidesAlike })}
        />
      </div>
    </section>
  );
}
