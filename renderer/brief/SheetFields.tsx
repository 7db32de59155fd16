// The sheet: its size, what the printer leaves unprinted, and how the printer holds it.

import { OneOf } from '../controls/Choice.tsx';
import { Field } from '../controls/Field.tsx';
import { Tick } from '../controls/Tick.tsx';
import type { PartProps } from './partProps.ts';
import { SHEET_EDGES } from './sheetEdges.ts';

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
        <OneOf
          label="The printer lays it, across"
          value={hold.across}
          options={[
            { value: 'left', label: 'to a guide on the left' },
            { value: 'right', label: 'to a guide on the right' },
            { value: 'centre', label: 'to the middle' },
          ]}
          onChange={(across) => change({ hold: { ...hold, across } })}
        />
        <OneOf
          label="and along"
          value={hold.along}
          options={[
            { value: 'lead', label: 'by its lead edge' },
            { value: 'centre', label: 'to the middle' },
          ]}
          onChange={(along) => change({ hold: { ...hold, along } })}
        />
        <Tick
          label="Both sides of the paper are alike"
          on={draft.sidesAlike}
          onChange={(sidesAlike) => change({ sidesAlike })}
        />
      </div>
    </section>
  );
}
