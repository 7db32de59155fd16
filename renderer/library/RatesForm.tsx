// What time costs in the studio, overs by the length of a run, and cutting.
import { UNITS } from '../../shared/units/length.ts';
import { Button } from '../controls/Button.tsx';
import { RadioButtons } from '../controls/Choice.tsx';
import { UNIT_NAMES } from '../controls/unitNames.ts';
import type { DraftOvers, LibraryDraft } from './draft/draft.ts';
import { EntryField } from './EntryField.tsx';
import { type EntryProps, listIn, propsOf } from './entryProps.ts';
import { newKey } from './withOneMore.ts';

const CUTTING = [
  { of: 'secondsPerCut', label: 'Seconds for each cut' },
  { of: 'secondsPerPile', label: 'Seconds for each pile' },
  { of: 'tallestPile', label: 'Tallest pile' },
  { of: 'widest', label: 'Widest along the knife' },
  { of: 'deepest', label: 'Deepest behind the knife' },
  { of: 'opening', label: 'Opening under the clamp' },
  { of: 'leastGauge', label: 'Least back gauge' },
] as const;

export function RatesForm(props: Omit<EntryProps<LibraryDraft>, 'field'>) {
  const { value, wrongs, type, take } = props;
  const { rates, currency } = value;
  const { overs } = rates;
  const oversList = listIn(props, 'rates.overs', overs, (changed) => ({
    rates: { ...rates, overs: changed },
  }));
  return (
    <>
      <RadioButtons
        label="Lengths without a unit are in"
        value={value.units}
        options={UNITS.map((unit) => ({ value: unit, label: UNIT_NAMES[unit] }))}
        onChange={(units) => take({ units })}
      />
      <div className="fields">
        <EntryField
          label="Currency"
          size="few"
          field="currency"
          wrongs={wrongs}
          value={currency}
          onChange={(typed) => type({ currency: typed })}
        />
        <EntryField
          label={`Labour per hour, ${currency}`}
          size="some"
          field="rates.labourPerHour"
          wrongs={wrongs}
          value={rates.labourPerHour}
          onChange={(labourPerHour) => type({ rates: { ...rates, labourPerHour } })}
        />
      </div>
      <section className="entry-part" aria-label="Overs">
        <h4>Overs by the length of the run</h4>
        {overs.length === 0 && <p className="soft">None are set, so each brief’s own overs count.</p>}
        {overs.map((entry, i) => (
          <OversFields
            key={entry.key}
            {...propsOf(oversList, entry)}
            number={i + 1}
            remove={() => oversList.take(overs.filter((o) => o !== entry))}
          />
        ))}
        <div>
          <Button onPress={() => oversList.take([...overs, nextOvers(overs)])}>Add a length of run</Button>
        </div>
      </section>
      <section className="entry-part" aria-label="Cutting">
        <h4>Cutting</h4>
        <div className="fields">
          {CUTTING.map(({ of, label }) => (
            <EntryField
              key={of}
              label={label}
              size="some"
              field={`rates.cutting.${of}`}
              wrongs={wrongs}
              value={rates[of]}
              onChange={(typed) => type({ rates: { ...rates, [of]: typed } })}
            />
          ))}
        </div>
      </section>
    </>
  );
}

interface OversFieldsProps extends EntryProps<DraftOvers> {
  /** From 1. */
  readonly number: number;
  readonly remove: () => void;
}

const OVERS = [
  { of: 'from', label: 'From good sheets' },
  { of: 'percent', label: 'Overs, %' },
  { of: 'least', label: 'Overs, at least' },
] as const;

function OversFields({ value, field, wrongs, type, number, remove }: OversFieldsProps) {
  return (
    <section className="fields" aria-label={`Length of run ${number}`}>
      {OVERS.map(({ of, label }) => (
        <EntryField
          key={of}
          label={label}
          size="some"
          field={`${field}.${of}`}
          wrongs={wrongs}
          value={value[of]}
          onChange={(typed) => type({ [of]: typed })}
        />
      ))}
      <div className="entry-remove">
        <Button kind="quiet" label={`Remove length of run ${number}`} onPress={remove}>
          Remove
        </Button>
      </div>
    </section>
  );
}

/** Overs for runs twice as long as the longest that has its own; the first begin at none. */
function nextOvers(overs: readonly DraftOvers[]): DraftOvers {
  const last = overs.at(-1);
  const from = Number(last?.from ?? 0);
  return {
    key: newKey(),
    from: last === undefined ? '0' : String(Number.isNaN(from) || from === 0 ? 250 : from * 2),
    percent: last?.percent ?? '5',
    least: last?.least ?? '3',
  };
}
