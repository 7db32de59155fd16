// A paper: how heavy and thick it is, what its sides are like, and what it can be bought as.
import type { Unit } from '../../../shared/units/length.ts';
import { Button } from '../../controls/Button.tsx';
import { Select } from '../../controls/Choice.tsx';
import { Tick } from '../../controls/Tick.tsx';
import type { DraftPaper } from '../draft/draft.ts';
import { EntryField } from '../EntryField.tsx';
import { type EntryProps, listIn, propsOf } from '../entryProps.ts';
import { sayWrong } from '../sayWrong.ts';
import { newKey } from '../withOneMore.ts';
import { FormFields } from './FormFields.tsx';
import { otherCaliper, otherWeight } from './otherMeasure.ts';

interface PaperFormProps extends EntryProps<DraftPaper> {
  readonly currency: string;
  readonly units: Unit;
}

export function PaperFields({ currency, units, ...props }: PaperFormProps) {
  const { value, field, wrongs, type, take } = props;
  const { forms, coated } = value;
  const formList = listIn(props, `${field}.forms`, forms, (changed) => ({ forms: changed }));
  const notAlike = sayWrong('Both sides are alike', `${field}.sidesAlike`, wrongs);
  const addForm = () => {
    const last = forms.at(-1);
    if (last !== undefined) take({ forms: [...forms, { ...last, key: newKey() }] });
  };
  return (
    <>
      <div className="fields">
        <EntryField
          label="Name of the paper"
          field={`${field}.name`}
          wrongs={wrongs}
          value={value.name}
          onChange={(name) => type({ name })}
        />
        <EntryField
          label="Weight"
          size="some"
          field={`${field}.weight`}
          wrongs={wrongs}
          value={value.weight}
          hint={otherWeight(value.weight)}
          onChange={(weight) => type({ weight })}
        />
        <EntryField
          label="Caliper"
          size="some"
          field={`${field}.caliper`}
          wrongs={wrongs}
          value={value.caliper}
          hint={otherCaliper(value.caliper)}
          onChange={(caliper) => type({ caliper })}
        />
      </div>
      <div className="fields">
        <Select
          label="Coated"
          value={coated}
          options={[
            { value: 'none', label: 'on no side' },
            { value: 'one-side', label: 'on one side' },
            { value: 'both-sides', label: 'on both sides' },
          ]}
          onChange={(chosen) => take({ coated: chosen, sidesAlike: chosen !== 'one-side' })}
        />
        <Tick
          label="Both sides are alike"
          on={value.sidesAlike}
          onChange={(sidesAlike) => take({ sidesAlike })}
        />
      </div>
      {notAlike !== undefined && <p className="entry-wrong">{notAlike}</p>}
      <section className="entry-part" aria-label="What it is bought as">
        <h4>What it is bought as</h4>
        {forms.map((form, i) => (
          <FormFields
            key={form.key}
            {...propsOf(formList, form)}
            number={i + 1}
            currency={currency}
            units={units}
            remove={forms.length === 1 ? undefined : () => take({ forms: forms.filter((f) => f !== form) })}
          />
        ))}
        <div>
          <Button onPress={addForm}>Add a sheet, parent sheet or roll</Button>
        </div>
      </section>
    </>
  );
}
