// The bench: the sheet with its pieces in the middle, the tools above it, and all of it in words beside it.
import { useState } from 'react';
import { useApp } from '../state/store.ts';
import { BenchCanvas } from './BenchCanvas.tsx';
import { useFollowedFindings } from './findings.ts';
import { ArtFaults } from './panel/ArtFaults.tsx';
import { ChosenMany } from './panel/ChosenMany.tsx';
import { ChosenOne } from './panel/ChosenOne.tsx';
import { Legend } from './panel/Legend.tsx';
import { Positions } from './panel/Positions.tsx';
import { Supply } from './panel/Supply.tsx';
import { Wrong } from './panel/Wrong.tsx';
import { RepeatDialog } from './RepeatDialog.tsx';
import { Toolbar } from './Toolbar.tsx';
import { useBenchActions } from './useBenchActions.ts';
import { useReadableJob } from './useReadableJob.ts';
import { useTurning } from './useTurning.ts';
import './panel/beside.css';
import './bench.css';

export function Bench() {
  const [repeating, setRepeating] = useState(false);
  useFollowedFindings();
  useBenchActions(() => setRepeating(true));
  const hands = useTurning();
  return (
    <section className="bench" aria-label="Bench">
      <Toolbar />
      <BenchCanvas hands={hands} />
      <aside className="beside" aria-label="The sheet in words">
        <Wrong />
        <ArtFaults />
        <Chosen />
        <section className="block grows" aria-label="Positions">
          <h2>Positions</h2>
          <Positions />
        </section>
        <Supply />
        <Legend />
      </aside>
      {repeating && <RepeatDialog onClose={() => setRepeating(false)} />}
    </section>
  );
}

/** What there is to set of the pieces that are selected, their numbers as a drag has them now. */
function Chosen() {
  const selection = useApp((s) => s.selection);
  const [only, ...more] = selection;
  const job = useReadableJob();
  const position = only === undefined ? undefined : job?.arrangement[only];
  if (only === undefined || position === undefined) return null;
  return more.length === 0 ? (
    <ChosenOne index={only} position={position} />
  ) : (
    <ChosenMany selection={selection} />
  );
}
