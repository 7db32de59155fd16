// The one chosen piece: where it lies, typed to the last thousandth, how its head points and which face lies up.

import { HEADS, type Head, headOf } from '../../../shared/geometry/head.ts';
import type { FaceName, Position } from '../../../shared/layout/position.ts';
import { points } from '../../../shared/units/length.ts';
import { readLength } from '../../../shared/units/read.ts';
import { showLength, showSize } from '../../../shared/units/show.ts';
import { RadioButtons, Select } from '../../controls/Choice.tsx';
import { TakenField } from '../../controls/Field.tsx';
import { headInWords, nameInWords } from '../../sheet/pieces/placeInWords.ts';
import { app } from '../../state/store.ts';
import { useSettledJob } from '../useSettledJob.ts';

export function ChosenOne({ index, position }: { readonly index: number; readonly position: Position }) {
  const { units } = useSettledJob().brief;
  const { trim, head, face, piece } = position;
  const { perform } = app.getState();
  const place = (axis: 'x' | 'y') => (typed: string) => {
    const length = readLength(typed, units);
    if (!length.ok) return length.fault.message;
    const at = { x: trim.x, y: trim.y, [axis]: points(length.value) };
    const placed = perform({ do: 'place', position: index, ...at });
    return placed.ok ? undefined : placed.fault.message;
  };
  return (
    <section className="block" aria-label="Selected piece">
      <h2 className="title-line">{nameInWords(position, index)}</h2>
      <div className="pair">
        <TakenField label="From the left" size="few" value={showLength(trim.x, units)} take={place('x')} />
        <TakenField label="From the tail" size="few" value={showLength(trim.y, units)} take={place('y')} />
      </div>
      <Select
        label="Head"
        value={String(head)}
        options={HEADS.map((h) => ({ value: String(h), label: headInWords(h) }))}
        onChange={(chosen) =>
          perform({ do: 'turn-heads', positions: [index], quarters: quartersTo(head, chosen) })
        }
      />
      <RadioButtons<FaceName>
        label="Lies up"
        value={face}
        options={[
          { value: 'front', label: 'Front' },
          { value: 'back', label: 'Back' },
        ]}
        onChange={(chosen) => {
          if (chosen !== face) perform({ do: 'swap-faces', positions: [index] });
        }}
      />
      <p className="soft">
        {piece} takes {showSize(trim, units)} here.
      </p>
    </section>
  );
}

function quartersTo(from: Head, chosen: string): number {
  return headOf(Number(chosen) - from) / 90;
}
