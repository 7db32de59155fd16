// The way of working: how the sheet is turned, how pieces stand on it, overs, marks and file names.
import { Select } from '../controls/Choice.tsx';
import { Field } from '../controls/Field.tsx';
import { Note } from '../controls/Note.tsx';
import { Tick } from '../controls/Tick.tsx';
import type { PartProps } from './partProps.ts';

export function WorkFields({ draft, change, wrongs }: PartProps) {
  const { overs, centring } = draft;
  const wrong = wrongs.work ?? wrongs.turn ?? wrongs.sidesAlike ?? wrongs['sheet.sidesAlike'];
  return (
    <section className="brief-part" aria-label="Way of working">
      <h3>Way of working</h3>
      {wrong !== undefined && <Note tone="bad">{wrong}</Note>}
      <div className="fields">
        <Select
          label="Work style"
          value={draft.style}
          options={[
            { value: 'work-and-turn', label: 'work-and-turn (side to side)' },
            { value: 'work-and-tumble', label: 'work-and-tumble (end to end)' },
            { value: 'work-and-back', label: 'work-and-back (sheetwise, two forms)' },
            { value: 'perfecting', label: 'perfecting (the printer turns)' },
            { value: 'simplex', label: 'simplex (one side only)' },
          ]}
          onChange={(style) => change({ style })}
        />
        {(draft.style === 'work-and-back' || draft.style === 'perfecting') && (
          <Select
            label="The sheet is turned"
            value={draft.turn}
            options={[
              { value: 'side-to-side', label: 'side to side' },
              { value: 'end-to-end', label: 'end to end' },
            ]}
            onChange={(turn) => change({ turn })}
          />
        )}
        <Field
          label="Gutter"
          size="few"
          value={draft.gutter}
          onChange={(gutter) => change({ gutter })}
          wrong={wrongs.gutter}
          placeholder="two bleeds"
        />
        <Select
          label="Across the sheet, pieces stand"
          value={centring.across}
          options={[
            { value: 'centre', label: 'in the middle' },
            { value: 'left', label: 'to the left' },
            { value: 'right', label: 'to the right' },
          ]}
          onChange={(across) => change({ centring: { ...centring, across } })}
        />
        <Select
          label="and along it"
          value={centring.along}
          options={[
            { value: 'centre', label: 'in the middle' },
            { value: 'lead', label: 'towards the lead edge' },
            { value: 'tail', label: 'towards the tail' },
          ]}
          onChange={(along) => change({ centring: { ...centring, along } })}
        />
      </div>
      <div className="fields">
        <Field
          label="Overs, %"
          size="some"
          value={overs.percent}
          onChange={(percent) => change({ overs: { ...overs, percent } })}
          wrong={wrongs['overs.percent']}
        />
        <Field
          label="Overs, at least"
          size="some"
          value={overs.least}
          onChange={(least) => change({ overs: { ...overs, least } })}
          wrong={wrongs['overs.least']}
        />
        <Field
          label="The files are named"
          value={draft.fileNames}
          onChange={(fileNames) => change({ fileNames })}
          wrong={wrongs.fileNames}
        />
        <Tick label="Print marks" on={draft.marks} onChange={(marks) => change({ marks })} />
      </div>
    </section>
  );
}
