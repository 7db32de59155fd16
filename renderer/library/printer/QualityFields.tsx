// A quality that a printer prints in, and how long a sheet takes in it.
import { Button } from '../../controls/Button.tsx';
import type { DraftQuality } from '../draft/draft.ts';
import { EntryField } from '../EntryField.tsx';
import type { EntryProps } from '../entryProps.ts';

interface QualityFieldsProps extends EntryProps<DraftQuality> {
  /** None for the only one. */
  readonly remove: (() => void) | undefined;
}

export function QualityFields({ value, field, wrongs, type, remove }: QualityFieldsProps) {
  const called = value.name.trim() === '' ? 'quality without a name' : value.name;
  return (
    <section className="fields" aria-label={`Quality: ${called}`}>
      <EntryField
        label="Name of the quality"
        field={`${field}.name`}
        wrongs={wrongs}
        value={value.name}
        onChange={(name) => type({ name })}
      />
      <EntryField
        label="Seconds for each sheet"
        size="some"
        field={`${field}.secondsBase`}
        wrongs={wrongs}
        value={value.secondsBase}
        onChange={(secondsBase) => type({ secondsBase })}
      />
      <EntryField
        label="and for each m² of it"
        size="some"
        field={`${field}.secondsPerSquareMetre`}
        wrongs={wrongs}
        value={value.secondsPerSquareMetre}
        onChange={(secondsPerSquareMetre) => type({ secondsPerSquareMetre })}
      />
      <div className="entry-remove">
        <Button
          kind="quiet"
          label={`Remove the quality ${called}`}
          disabled={remove === undefined}
          onPress={() => remove?.()}
        >
          Remove
        </Button>
      </div>
    </section>
  );
}
