// The readings of a printer's counter, each beside what the model would have said.
import { type InkModel, predictInk } from '../../../shared/ink/inkModel.ts';
import { Button } from '../../controls/Button.tsx';
import { numberIn } from '../../controls/numberIn.ts';
import type { DraftReading } from '../draft/draft.ts';
import { shareIn } from '../draft/hundredth.ts';
import { ml } from './inkInWords.ts';

interface ReadingsProps {
  readonly readings: readonly DraftReading[];
  readonly model: InkModel | undefined;
  readonly remove: (reading: DraftReading) => void;
}

export function Readings({ readings, model, remove }: ReadingsProps) {
  return (
    <table className="entry-table" aria-label="Readings of the counter">
      <thead>
        <tr>
          <th scope="col" className="words">
            Date
          </th>
          <th scope="col" className="words">
            Job
          </th>
          <th scope="col">Printed, m²</th>
          <th scope="col">Coverage</th>
          <th scope="col">Counter</th>
          <th scope="col">By the model</th>
          <th scope="col">
            <span className="unseen">Remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {readings.map((reading) => (
          <tr key={reading.key}>
            <td className="words">{reading.date}</td>
            <th scope="row">{reading.job}</th>
            <td>{reading.area}</td>
            <td>{reading.coverage} %</td>
            <td>{reading.ml} ml</td>
            <td>{model === undefined ? '' : saidBy(model, reading)}</td>
            <td>
              <Button
                kind="quiet"
                label={`Remove the reading of ${reading.job}, ${reading.date}`}
                onPress={() => remove(reading)}
              >
                Remove
              </Button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Readings that stand in the table were in order when they were added. */
function saidBy(model: InkModel, { area, coverage }: DraftReading): string {
  return ml(predictInk(model, { area: Number(numberIn(area)), coverage: Number(shareIn(coverage)) }).ml);
}
