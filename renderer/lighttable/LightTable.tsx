// The light table: the other side shines through, faults are told, and one piece is picked up and turned.
import { useMemo, useState } from 'react';
import { turnOf } from '../../shared/geometry/work.ts';
import { useActions } from '../actions/useActions.ts';
import { app, useApp, useJob } from '../state/store.ts';
import { AboutHeld } from './AboutHeld.tsx';
import { takeInHand } from './cardInHand.ts';
import { Faults } from './Faults.tsx';
import { LightCanvas } from './LightCanvas.tsx';
import { backsOf, lightFaults } from './lightFaults.ts';
import { lightView } from './lightView.ts';
import { PickUp } from './PickUp.tsx';
import { PieceInHand } from './PieceInHand.tsx';
import { Shine } from './Shine.tsx';
import { trueZoom } from './trueSize.ts';
import { useTypeHeads } from './useTypeHeads.ts';
import '../bench/panel/beside.css';
import './light.css';

const ZOOM_FACTOR = 1.25;

export function LightTable() {
  const job = useJob();
  const inHand = useApp((s) => s.inHand);
  const [through, setThrough] = useState(0.5);
  const [zoom, setZoom] = useState(trueZoom);
  const typeHeads = useTypeHeads(job.brief);
  const backed = useMemo(() => backsOf(job), [job]);
  const faults = lightFaults(job, backed, typeHeads);
  const held = inHand === undefined ? undefined : takeInHand(job, inHand);
  const turned = turnOf(job.brief.work) !== undefined;
  useActions({
    'zoom-in': { run: () => lightView.zoomBy(ZOOM_FACTOR) },
    'zoom-out': { run: () => lightView.zoomBy(1 / ZOOM_FACTOR) },
    'zoom-fit': { run: () => lightView.showWhole() },
    'take-in-hand': { can: job.arrangement.length > 0, run: () => app.getState().takeInHand(inHand ?? 0) },
  });
  const words = `The sheet on the light table, ${job.arrangement.length} pieces, the other side ${shinesWords(through)}.`;
  return (
    <section className="light-table" aria-label="Light table">
      <div className="light-room">
        {held === undefined ? (
          <LightCanvas through={turned ? through : 0} backed={backed} words={words} />
        ) : (
          <PieceInHand key={inHand} held={held} zoom={zoom} />
        )}
      </div>
      <aside className="beside" aria-label="The light table in words">
        {held === undefined && turned && <Shine through={through} onChange={setThrough} />}
        {held !== undefined && <AboutHeld held={held} onCorrected={() => setZoom(trueZoom())} />}
        <Faults faults={faults} turned={turned} />
        <PickUp faults={faults} />
      </aside>
    </section>
  );
}

function shinesWords(through: number): string {
  if (through <= 0.02) return 'hidden';
  return through >= 0.98 ? 'alone to be seen' : `shining through by ${Math.round(through * 100)} %`;
}
