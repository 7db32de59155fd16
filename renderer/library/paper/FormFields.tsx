// A paper as it is bought: a sheet, a parent sheet to be cut down, or a roll, and what it costs.
import type { PricedBy } from '../../../shared/library/library.ts';
import type { Unit } from '../../../shared/units/length.ts';
import { Button } from '../../controls/Button.tsx';
import { type Option, Select } from '../../controls/Choice.tsx';
import type { DraftForm } from '../draft/draft.ts';
import { EntryField } from '../EntryField.tsx';
import type { EntryProps } from '../entryProps.ts';
import { sizesOffered } from './sizesOffered.ts';

const KINDS: readonly Option<DraftForm['is']>[] = [
  { value: 'sheet', label: 'sheet, printed as it is' },
  { value: 'parent', label: 'parent sheet, cut down' },
  { value: 'roll', label: 'roll, cut to lengths' },
];

const PER: Readonly<Record<PricedBy, string>> = {
  sheet: 'a sheet',
  ream: 'a ream of 500',
  kg: 'a kilogram',
  metre: 'a metre of roll',
};

/** What each is priced by, the usual first. */
const PRICED: Readonly<Record<DraftForm['is'], readonly PricedBy[]>> = {
  sheet: ['sheet', 'ream', 'kg'],
  parent: ['sheet', 'ream', 'kg'],
  roll: ['metre', 'kg'],
};

interface FormFieldsProps extends EntryProps<DraftForm> {
  /** From 1. */
  readonly number: number;
  readonly currency: string;
  readonly units: Unit;
  /** None for the only one. */
  readonly remove: (() => void) | undefined;
}

export function FormFields(props: FormFieldsProps) {
  const { value, field, wrongs, type, take, number, currency, units, remove } = props;
  const { is, size, per } = value;
  const becomes = (kind: DraftForm['is']) => {
    const priced = PRICED[kind];
    take({ is: kind, per: priced.includes(per) ? per : (priced[0] ?? per) });
  };
  return (
    <section className="entry-card" aria-label={`Bought as, ${number}`}>
      <div className="fields">
        <Select label="Bought as" value={is} options={KINDS} onChange={becomes} />
        <EntryField
          label={is === 'roll' ? 'Width of the roll' : 'Size'}
          size="some"
          field={`${field}.${is === 'roll' ? 'width' : 'size'}`}
          wrongs={wrongs}
          value={size}
          onChange={(typed) => type({ size: typed })}
        />
        {is !== 'roll' && (
          <Select
            label="Usual sizes"
            value={size}
            options={sizesOffered(units)}
            onChange={(chosen) => take({ size: chosen })}
          />
        )}
        {is !== 'roll' && (
          <Select
            label="Grain"
            value={value.grain}
            options={[
              { value: 'long', label: 'along the long edge' },
              { value: 'short', label: 'along the short edge' },
              { value: 'unknown', label: 'not known' },
            ]}
            onChange={(grain) => take({ grain })}
          />
        )}
      </div>
      <div className="fields">
        <EntryField
          label={`Price, ${currency}`}
          size="few"
          field={`${field}.price.amount`}
          wrongs={wrongs}
          value={value.amount}
          onChange={(amount) => type({ amount })}
        />
        <Select
          label="for"
          value={per}
          options={PRICED[is].map((by) => ({ value: by, label: PER[by] }))}
          onChange={(by) => take({ per: by })}
        />
        {is !== 'sheet' && (
          <EntryField
            label={is === 'roll' ? 'Cut to lengths' : 'Cut to sizes'}
            field={`${field}.cutTo`}
            wrongs={wrongs}
            value={value.cutTo}
            placeholder={is === 'roll' ? 'as the pieces need' : 'into equal parts'}
            hint="Several are separated by semicolons."
            onChange={(cutTo) => type({ cutTo })}
          />
        )}
        {remove !== undefined && (
          <div className="entry-remove">
            <Button kind="quiet" label={`Remove what it is bought as, ${number}`} onPress={remove}>
              Remove
            </Button>
          </div>
        )}
      </div>
    </section>
  );
}
