// What if: other quantities, other prices for work and ink, answered at once and without changing the job.
import { Button } from '../controls/Button.tsx';
import { Slide } from '../controls/Slide.tsx';
import { AS_THEY_ARE, type Ratios } from './ratios.ts';

/** Sliders move by ratios: from a quarter to four times, in steps of a tenth of a doubling. */
const MAX_DOUBLINGS = 2;
const SLIDER_STEP = 0.1;

const SLIDERS: readonly { readonly of: keyof Ratios; readonly label: string }[] = [
  { of: 'quantity', label: 'Quantity' },
  { of: 'labour', label: 'Labour rate' },
  { of: 'ink', label: 'Price of ink' },
];

interface Props {
  readonly ratios: Ratios;
  /** What each comes to, in words. */
  readonly says: Readonly<Record<keyof Ratios, string>>;
  readonly change: (ratios: Ratios) => void;
}

export function WhatIfPanel({ ratios, says, change }: Props) {
  const changed = SLIDERS.some(({ of }) => ratios[of] !== 1);
  return (
    <section className="read-panel plan-panel what-if" aria-label="What if">
      <h3>What if</h3>
      <div className="what-if-sliders">
        {SLIDERS.map(({ of, label }) => (
          <Slide
            key={of}
            label={label}
            says={says[of]}
            value={Math.log2(ratios[of])}
            minValue={-MAX_DOUBLINGS}
            maxValue={MAX_DOUBLINGS}
            step={SLIDER_STEP}
            onChange={(doublings) => change({ ...ratios, [of]: doublings === 0 ? 1 : 2 ** doublings })}
          />
        ))}
        <Button kind="quiet" disabled={!changed} onPress={() => change(AS_THEY_ARE)}>
          Reset
        </Button>
      </div>
    </section>
  );
}
