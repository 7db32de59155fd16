// The ways of working side by side: what each would hold and print, or why it cannot be. Choosing one lays the sheet out.
import { Label, Radio, RadioGroup } from 'react-aria-components';
import type { Work } from '../../shared/geometry/work.ts';
import { type compareWorks, sameWork, type WorkOffer } from '../../shared/job/compareWorks.ts';
import { app, useJob } from '../state/store.ts';
import { nameWork } from './nameWork.ts';

const keyOf = (work: Work) => `${work.style} ${'turn' in work ? work.turn : ''}`;

export function Ways({ ways }: { readonly ways: ReturnType<typeof compareWorks> }) {
  const { work: now } = useJob().brief;
  const choose = (key: string) => {
    const chosen = ways.find(({ work }) => keyOf(work) === key);
    if (chosen?.offer.ok && !sameWork(chosen.work, now)) {
      app.getState().perform({ do: 'set-work', work: chosen.work });
    }
  };
  return (
    <section className="read-panel plan-panel" aria-label="Ways of working">
      <RadioGroup className="ways" value={keyOf(now)} onChange={choose}>
        <Label className="ways-name">Way of working</Label>
        <p className="soft">
          Choosing another way lays the sheet out afresh. Undo brings the old layout back.
        </p>
        {ways.map(({ work, offer }) => (
          <Radio key={keyOf(work)} value={keyOf(work)} className="way" isDisabled={!offer.ok}>
            <span className="dot" aria-hidden="true" />
            <strong>{nameWork(work)}</strong>
            {offer.ok ? (
              <Counts offer={offer.value} />
            ) : (
              <span className="soft">
                {offer.fault.message} {offer.fault.remedy}
              </span>
            )}
          </Radio>
        ))}
      </RadioGroup>
    </section>
  );
}

function Counts({ offer: { up, forms, count } }: { readonly offer: WorkOffer }) {
  const leftOver = count.yields.reduce((sum, y) => sum + y.leftOver, 0);
  return (
    <span className="way-counts">
      <span>{up} up</span>
      <span>{forms === 1 ? 'one form' : 'two forms'}</span>
      <span>
        {count.sheets} sheets <span className="soft">with {count.overs} overs</span>
      </span>
      <span>
        {leftOver} {leftOver === 1 ? 'piece' : 'pieces'} left over
      </span>
    </span>
  );
}
