// A printer's ink: what it costs, how much is taken, and the readings that this is learned from.
import type { InkModel } from '../../../shared/ink/inkModel.ts';
import { Note } from '../../controls/Note.tsx';
import type { DraftInk, DraftReading } from '../draft/draft.ts';
import type { LibraryErrors } from '../draft/takeDraft.ts';
import { EntryField } from '../EntryField.tsx';
import type { EntryProps } from '../entryProps.ts';
import { inkExamples, inkInWords } from './inkInWords.ts';
import { NewReading } from './NewReading.tsx';
import { Readings } from './Readings.tsx';

/** What is learned of a printer's ink, and how a reading is added. */
export interface InkLearning {
  /** The model in force, as it was last taken; none while a new printer was not yet in order. */
  readonly model: InkModel | undefined;
  /** What the readings came to, in words, where there are any. */
  readonly says: string | undefined;
  /** The reading that is being written, if one is. */
  readonly started: DraftReading | undefined;
  readonly write: (reading: DraftReading | undefined) => void;
  /** Adds the reading, or says what is wrong with it. */
  readonly add: (reading: DraftReading) => LibraryErrors;
}

interface InkPartProps extends EntryProps<DraftInk> {
  readonly currency: string;
  readonly learning: InkLearning;
}

const RULE = [
  { of: 'base', label: 'ml for every m² printed' },
  { of: 'perCoverage', label: 'ml more, one ink all over' },
  { of: 'spread', label: 'Off by at most, %' },
] as const;

export function InkPart({ value, field, wrongs, type, take, currency, learning }: InkPartProps) {
  const { model, says, started, write, add } = learning;
  const { rule, readings } = value;
  const fitted = model?.source === 'fitted';
  const removed = (reading: DraftReading) => {
    const left = readings.filter((r) => r !== reading);
    take({ readings: left, fitted: left.length === 0 ? undefined : value.fitted });
  };
  return (
    <section className="entry-part" aria-label="Ink">
      <h4>Ink</h4>
      <div className="fields">
        <EntryField
          label={`Price per ml, ${currency}`}
          size="some"
          field={`${field}.pricePerMl`}
          wrongs={wrongs}
          value={value.pricePerMl}
          onChange={(pricePerMl) => type({ pricePerMl })}
        />
      </div>
      <h5>{fitted ? 'Rule of thumb, where there are too few readings' : 'Rule of thumb'}</h5>
      <div className="fields">
        {RULE.map(({ of, label }) => (
          <EntryField
            key={of}
            label={label}
            size="some"
            field={`${field}.${fitted ? 'rule' : 'model'}.${of}`}
            wrongs={wrongs}
            value={rule[of]}
            onChange={(typed) => type({ rule: { ...rule, [of]: typed } })}
          />
        ))}
      </div>
      <h5>What is reckoned with</h5>
      {model !== undefined && (
        <div className="ink-said">
          <Note tone={fitted ? 'good' : 'know'}>
            {inkInWords(model).map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
            {says !== undefined && <p>{says}</p>}
          </Note>
          <table className="entry-table">
            <thead>
              <tr>
                <th scope="col">Coverage</th>
                <th scope="col">1 m² takes</th>
                <th scope="col">between</th>
              </tr>
            </thead>
            <tbody>
              {inkExamples(model).map(({ coverage, takes, between }) => (
                <tr key={coverage}>
                  <th scope="row">{coverage} %</th>
                  <td>{takes}</td>
                  <td>{between}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <h5>Readings of its counter</h5>
      <p className="soft">
        After a job, note how much ink the printer’s own counter says it took. A coverage of 100 % is one ink
        covering everything; four inks come to 400 %.
      </p>
      {readings.length > 0 && <Readings readings={readings} model={model} remove={removed} />}
      <NewReading started={started} write={write} add={add} />
    </section>
  );
}
