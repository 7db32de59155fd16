// Several chosen pieces: brought in line, spread out, or set a gutter apart.
import { useState } from 'react';
import type { ActionName } from '../../../shared/contract/actions.ts';
import { leadersOf } from '../../../shared/job/partners.ts';
import { points } from '../../../shared/units/length.ts';
import { readLength } from '../../../shared/units/read.ts';
import { showLength } from '../../../shared/units/show.ts';
import { Button } from '../../controls/Button.tsx';
import { Field } from '../../controls/Field.tsx';
import { app } from '../../state/store.ts';
import { ActionRow } from '../ActionRow.tsx';
import { useSettledJob } from '../useSettledJob.ts';

const ALIGN = [
  'align-left',
  'align-middle-across',
  'align-right',
  'align-lead',
  'align-middle-along',
  'align-tail',
] as const satisfies readonly ActionName[];

export function ChosenMany({ selection }: { readonly selection: readonly number[] }) {
  const job = useSettledJob();
  const { units, gutter } = job.brief;
  const [gap, setGap] = useState(showLength(points(gutter), units));
  const length = readLength(gap, units);
  const apart = (axis: 'x' | 'y') => {
    if (!length.ok) return;
    app.getState().perform({ do: 'distribute', positions: selection, axis, gap: points(length.value) });
  };
  const few = leadersOf(job, selection).length < 2;
  return (
    <section className="block" aria-label="Chosen pieces">
      <h2>{selection.length} pieces selected</h2>
      <h3>In line</h3>
      <ActionRow names={ALIGN} label="In line" />
      <h3>Equal gaps</h3>
      <ActionRow names={['distribute-across', 'distribute-along']} label="Equal gaps" />
      <Field
        label="Gaps of"
        size="few"
        value={gap}
        onChange={setGap}
        wrong={length.ok ? undefined : length.fault.message}
      />
      <div className="pair">
        <Button onPress={() => apart('x')} disabled={few || !length.ok}>
          Across the feed
        </Button>
        <Button onPress={() => apart('y')} disabled={few || !length.ok}>
          Along the feed
        </Button>
      </div>
    </section>
  );
}
