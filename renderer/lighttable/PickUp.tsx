// The pieces in words, each to be taken in hand.
import { Button } from 'react-aria-components';
import { Sign } from '../controls/Note.tsx';
import { nameInWords } from '../sheet/pieces/placeInWords.ts';
import { app, useApp, useJob } from '../state/store.ts';
import type { LightFault } from './lightFaults.ts';

export function PickUp({ faults }: { readonly faults: readonly LightFault[] }) {
  const { arrangement } = useJob();
  const inHand = useApp((s) => s.inHand);
  return (
    <section className="block grows" aria-label="Take a piece in hand">
      <h2>Take a piece in hand</h2>
      <ul className="pick-up">
        {arrangement.map((position, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a position is its place in the arrangement.
          <li key={index}>
            <Button
              className="pick"
              aria-label={nameInWords(position, index)}
              aria-pressed={inHand === index}
              onPress={() => app.getState().takeInHand(inHand === index ? undefined : index)}
            >
              <span className="number">{index + 1}</span>
              <span className="piece-name" title={position.piece}>
                {position.piece}
              </span>
              <span className="soft">{position.face}</span>
              {faults.some((f) => f.positions.includes(index)) && <Sign tone="bad" />}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
