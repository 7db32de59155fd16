// The ways of working side by side: what each would hold and print, or why it cannot be. Choosing one lays the sheet out.
import { useMemo } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import type { Work } from '../../shared/geometry/work.ts';
import { compareWorks, sameWork } from '../../shared/job/compareWorks.ts';
import { app, useJob } from '../state/store.ts';
import { nameWork } from './nameWork.ts';

const keyOf = (work: Work) => `${work.style} ${'turn' in work ? work.turn : ''}`;

export function Ways() {
  const { brief } = useJob();
  const ways = useMemo(() => compareWorks(brief), [brief]);
  const choose = (key: string) => {
    const chosen = ways.find(({ work }) => keyOf(work) === key);
    if (chosen?.offer.ok && !sameWork(chosen.work, brief.work)) {
      app.getState().perform({ do: 'set-work', work: chosen.work });
    }
  };
  return (
    <section className="plan-panel">
      <RadioGroup className="ways" value={keyOf(brief.work)} onChange={choose}>
        <Label className="ways-name">Way of working</Label>
        {ways.map(({ work, offer }) => (
          <Radio key={keyOf(work)} value={keyOf(work)} className="way" isDisabled={!offer.ok}>
            <strong>{nameWork(work)}</strong>
            {offer.ok ? (
              <span className="way-counts">
                <span>{offer.value.up} up</span>
                <span>{offer.value.forms === 1 ? 'one form' : 'two forms'}</span>
                <span>{offer.value.count.sheets} sheets</span>
              </span>
            ) : (
              <span className="soft">{offer.fault.message}</span>
            )}
          </Radio>
        ))}
      </RadioGroup>
    </section>
  );
}
