// What the light table found, in words, with what would mend it.
import { Button } from '../controls/Button.tsx';
import { Note } from '../controls/Note.tsx';
import { app } from '../state/store.ts';
import { type LightFault, type Mend, nameOfMend } from './lightFaults.ts';
import { mend } from './mend.ts';

/** More than these are counted, not listed. */
const MAX_FAULTS_SHOWN = 30;

export function Faults({
  faults,
  turned,
}: {
  readonly faults: readonly LightFault[];
  readonly turned: boolean;
}) {
  return (
    <section className="block" aria-label="What the light table shows">
      <h2>
        {faults.length === 0
          ? 'Both sides agree'
          : faults.length === 1
            ? 'One fault'
            : `${faults.length} faults`}
      </h2>
      {faults.length === 0 && (
        <Note tone="good">
          {turned
            ? 'Every piece has its own back behind it, in place and the right way up.'
            : 'The sheet is printed on one side.'}
        </Note>
      )}
      <ul className="faults">
        {faults.slice(0, MAX_FAULTS_SHOWN).map((fault) => (
          <li key={fault.key}>
            <Note tone={fault.certain ? 'bad' : 'ask'}>{fault.message}</Note>
            <div className="mends">
              <Look positions={fault.positions} />
              {fault.mends.map((how) => (
                <MendButton key={nameOfMend(how)} how={how} />
              ))}
            </div>
          </li>
        ))}
        {faults.length > MAX_FAULTS_SHOWN && (
          <li className="soft">and {faults.length - MAX_FAULTS_SHOWN} more of these</li>
        )}
      </ul>
    </section>
  );
}

function Look({ positions: [first] }: { readonly positions: readonly number[] }) {
  if (first === undefined) return null;
  return <Button onPress={() => app.getState().takeInHand(first)}>Take it in hand</Button>;
}

function MendButton({ how }: { readonly how: Mend }) {
  return <Button onPress={() => void mend(how)}>{nameOfMend(how)}</Button>;
}
