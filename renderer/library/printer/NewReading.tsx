// A reading that is being written: it is added once it is in order.
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../controls/Button.tsx';
import type { DraftReading } from '../draft/draft.ts';
import type { LibraryErrors } from '../draft/takeDraft.ts';
import { EntryField } from '../EntryField.tsx';
import { newKey } from '../withOneMore.ts';

interface NewReadingProps {
  readonly started: DraftReading | undefined;
  readonly write: (reading: DraftReading | undefined) => void;
  /** Adds the reading, or says what is wrong with it, by the names of its own fields. */
  readonly add: (reading: DraftReading) => LibraryErrors;
}

const FIELDS = [
  { of: 'date', label: 'Date', size: 'few' },
  { of: 'job', label: 'Job', size: 'all' },
  { of: 'area', label: 'Printed, m²', size: 'few' },
  { of: 'coverage', label: 'Coverage, %', size: 'some' },
  { of: 'ml', label: 'Counter, ml', size: 'few' },
] as const;

export function NewReading({ started, write, add }: NewReadingProps) {
  if (started !== undefined) return <ReadingForm reading={started} write={write} add={add} />;
  return (
    <div>
      <Button onPress={() => write(emptyReading())}>Add a reading</Button>
    </div>
  );
}

function ReadingForm({
  reading,
  write,
  add,
}: Omit<NewReadingProps, 'started'> & { readonly reading: DraftReading }) {
  const [wrongs, setWrongs] = useState<LibraryErrors>({});
  const card = useRef<HTMLElement>(null);
  useEffect(() => {
    card.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const finish = () => {
    const found = add(reading);
    if (Object.keys(found).length === 0) write(undefined);
    else setWrongs(found);
  };
  return (
    <section ref={card} className="entry-card" aria-label="New reading">
      <div className="fields">
        {FIELDS.map(({ of, label, size }) => (
          <EntryField
            key={of}
            label={label}
            size={size}
            field={of}
            wrongs={wrongs}
            value={reading[of]}
            autoFocus={of === 'job'}
            onChange={(typed) => write({ ...reading, [of]: typed })}
          />
        ))}
      </div>
      <div className="entry-buttons">
        <Button kind="quiet" onPress={() => write(undefined)}>
          Give it up
        </Button>
        <Button onPress={finish}>Add the reading</Button>
      </div>
    </section>
  );
}

/** A reading of today. */
function emptyReading(): DraftReading {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return {
    key: newKey(),
    date: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    job: '',
    area: '',
    coverage: '',
    ml: '',
  };
}
