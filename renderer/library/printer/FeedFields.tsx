// A tray, a slot or a guide of a printer: the sheets it takes, how it holds them, and what hands do at it.

import { Button } from '../../controls/Button.tsx';
import { HoldFields } from '../../controls/HoldFields.tsx';
import { Tick } from '../../controls/Tick.tsx';
import { SHEET_EDGES } from '../../draft/sheetEdges.ts';
import type { DraftFeed } from '../draft/draft.ts';
import { EntryField } from '../EntryField.tsx';
import type { EntryProps } from '../entryProps.ts';

const HAND = [
  { of: 'load', label: 'Loading, seconds per sheet' },
  { of: 'align', label: 'Aligning, seconds per sheet' },
  { of: 'turn', label: 'Turning, seconds per sheet' },
] as const;

interface FeedFieldsProps extends EntryProps<DraftFeed> {
  /** None for the only one. */
  readonly remove: (() => void) | undefined;
}

export function FeedFields({ value, field, wrongs, type, take, remove }: FeedFieldsProps) {
  const { unprintable, hold, hand } = value;
  const called = value.name.trim() === '' ? 'feed without a name' : value.name;
  return (
    <section className="entry-card" aria-label={`Feed: ${called}`}>
      <div className="fields">
        <EntryField
          label="Name of the feed"
          field={`${field}.name`}
          wrongs={wrongs}
          value={value.name}
          onChange={(name) => type({ name })}
        />
        <EntryField
          label="Smallest sheet"
          size="some"
          field={`${field}.least`}
          wrongs={wrongs}
          value={value.least}
          onChange={(least) => type({ least })}
        />
        <EntryField
          label="Largest sheet"
          size="some"
          field={`${field}.most`}
          wrongs={wrongs}
          value={value.most}
          onChange={(most) => type({ most })}
        />
        <EntryField
          label="Thickest paper"
          size="few"
          field={`${field}.thickest`}
          wrongs={wrongs}
          value={value.thickest}
          placeholder="not known"
          onChange={(thickest) => type({ thickest })}
        />
      </div>
      <div className="fields">
        {SHEET_EDGES.map(({ edge, label }) => (
          <EntryField
            key={edge}
            label={label}
            size="some"
            field={`${field}.unprintable.${edge}`}
            wrongs={wrongs}
            value={unprintable[edge]}
            onChange={(typed) => type({ unprintable: { ...unprintable, [edge]: typed } })}
          />
        ))}
      </div>
      <div className="fields">
        <HoldFields hold={hold} onChange={(held) => take({ hold: held })} />
        <div className="entry-ticks">
          <Tick
            label="Automatic two-sided printing"
            on={value.turnsItself}
            onChange={(turnsItself) => take({ turnsItself })}
          />
          <Tick label="Attended" on={value.attended} onChange={(attended) => take({ attended })} />
        </div>
      </div>
      <div className="fields">
        {HAND.map(({ of, label }) => (
          <EntryField
            key={of}
            label={label}
            size="some"
            field={`${field}.hand.${of}`}
            wrongs={wrongs}
            value={hand[of]}
            onChange={(typed) => type({ hand: { ...hand, [of]: typed } })}
          />
        ))}
        {remove !== undefined && (
          <div className="entry-remove">
            <Button kind="quiet" label={`Remove the feed ${called}`} onPress={remove}>
              Remove
            </Button>
          </div>
        )}
      </div>
    </section>
  );
}
