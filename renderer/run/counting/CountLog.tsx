// Counts, the latest first; the last count can be taken back by its name, and any other that nothing rests on.
import { nameOfEvent } from '../../../shared/run/events.ts';
import { lastCount, type PrintRun, standing } from '../../../shared/run/run.ts';
import { Button } from '../../controls/Button.tsx';
import { undoLastCount } from '../../desk/runs.ts';
import { showTimeOfDay } from '../../desk/showDate.ts';

export function CountLog({ run }: { readonly run: PrintRun }) {
  const [beginning] = run.entries;
  const last = lastCount(run) ?? beginning;
  const counts = standing(run).toReversed();
  return (
    <section className="read-panel count-panel" aria-label="Counts">
      <h3>Counts</h3>
      {last !== undefined && (
        <Button onPress={() => void undoLastCount(last.id, nameOfEvent(last.event))}>
          Take back “{nameOfEvent(last.event)}”
        </Button>
      )}
      <ol className="count-log">
        {counts.map(({ id, at, event }) => {
          const name = nameOfEvent(event);
          return (
            <li key={id}>
              <time dateTime={at}>{showTimeOfDay(at)}</time>
              <span>{name}</span>
              {id !== last?.id && event.kind !== 'begun' && (
                <Button
                  kind="quiet"
                  label={`Take back “${name}”`}
                  onPress={() => void undoLastCount(id, name)}
                >
                  Take back
                </Button>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
