// A printer: how sheets get into it, what it prints in, what setting up takes, and its ink.
import { Button } from '../../controls/Button.tsx';
import type { DraftPrinter } from '../draft/draft.ts';
import { EntryField } from '../EntryField.tsx';
import { type EntryProps, listIn, propsOf } from '../entryProps.ts';
import { withOneMore } from '../withOneMore.ts';
import { FeedFields } from './FeedFields.tsx';
import { type InkLearning, InkPart } from './InkPart.tsx';
import { QualityFields } from './QualityFields.tsx';

interface PrinterFormProps extends EntryProps<DraftPrinter> {
  readonly currency: string;
  /** What is told of its ink beside the fields. */
  readonly learning: InkLearning;
}

export function PrinterForm({ currency, learning, ...props }: PrinterFormProps) {
  const { value, field, wrongs, type, take } = props;
  const { feeds, qualities, makeReady, wearPerSide } = value;
  const feedList = listIn(props, `${field}.feeds`, feeds, (changed) => ({ feeds: changed }));
  const qualityList = listIn(props, `${field}.qualities`, qualities, (changed) => ({ qualities: changed }));
  return (
    <>
      <div className="fields">
        <EntryField
          label="Name of the printer"
          field={`${field}.name`}
          wrongs={wrongs}
          value={value.name}
          onChange={(name) => type({ name })}
        />
        <EntryField
          label="Make-ready, minutes"
          size="some"
          field={`${field}.makeReady.minutes`}
          wrongs={wrongs}
          value={makeReady.minutes}
          onChange={(minutes) => type({ makeReady: { ...makeReady, minutes } })}
        />
        <EntryField
          label="Make-ready, sheets"
          size="some"
          field={`${field}.makeReady.sheets`}
          wrongs={wrongs}
          value={makeReady.sheets}
          onChange={(sheets) => type({ makeReady: { ...makeReady, sheets } })}
        />
        <EntryField
          label={`Wear per printed side, ${currency}`}
          size="some"
          field={`${field}.wearPerSide`}
          wrongs={wrongs}
          value={wearPerSide}
          onChange={(wear) => type({ wearPerSide: wear })}
        />
      </div>
      <section className="entry-part" aria-label="Feeds">
        <h4>Feeds</h4>
        {feeds.map((feed) => (
          <FeedFields
            key={feed.key}
            {...propsOf(feedList, feed)}
            remove={feeds.length === 1 ? undefined : () => take({ feeds: feeds.filter((f) => f !== feed) })}
          />
        ))}
        <div>
          <Button onPress={() => take({ feeds: withOneMore(feeds, 'Another feed') })}>Add a feed</Button>
        </div>
      </section>
      <section className="entry-part" aria-label="Qualities">
        <h4>Print modes, the usual one first</h4>
        {qualities.map((quality) => (
          <QualityFields
            key={quality.key}
            {...propsOf(qualityList, quality)}
            remove={
              qualities.length === 1
                ? undefined
                : () => take({ qualities: qualities.filter((q) => q !== quality) })
            }
          />
        ))}
        <div>
          <Button onPress={() => take({ qualities: withOneMore(qualities, 'Another quality') })}>
            Add a quality
          </Button>
        </div>
      </section>
      <InkPart
        value={value.ink}
        field={`${field}.ink`}
        wrongs={wrongs}
        type={(ink) => type({ ink: { ...value.ink, ...ink } })}
        take={(ink) => take({ ink: { ...value.ink, ...ink } })}
        currency={currency}
        learning={learning}
      />
    </>
  );
}
