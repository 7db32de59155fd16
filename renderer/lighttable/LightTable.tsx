// The light table: the other side shines through, faults are told, and one piece is picked up and turned.
import { useMemo, useState } from 'react';
import { Button, Label, Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { turnOf } from '../../shared/geometry/work.ts';
import { points } from '../../shared/units/length.ts';
import { readLength } from '../../shared/units/read.ts';
import { showLength } from '../../shared/units/show.ts';
import { useActions } from '../actions/useActions.ts';
import { nameInWords } from '../bench/panel/placeInWords.ts';
import { TakenField } from '../controls/Field.tsx';
import { Sign } from '../controls/Note.tsx';
import { app, useApp, useJob } from '../state/store.ts';
import { takeInHand } from './cardInHand.ts';
import { Faults } from './Faults.tsx';
import { LightCanvas, lightView } from './LightCanvas.tsx';
import { backsOf, type LightFault, lightFaults } from './lightFaults.ts';
import { PieceInHand } from './PieceInHand.tsx';
import { correctTrueSize, trueZoom } from './trueSize.ts';
import { useTypeHeads } from './useTypeHeads.ts';
import '../bench/panel/beside.css';
import './light.css';

const NEARER = 1.25;

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
    'zoom-in': { run: () => lightView.zoomBy(NEARER) },
    'zoom-out': { run: () => lightView.zoomBy(1 / NEARER) },
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
        {held !== undefined && <TrueSize width={held.size.w} onCorrected={() => setZoom(trueZoom())} />}
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

function Shine({
  through,
  onChange,
}: {
  readonly through: number;
  readonly onChange: (through: number) => void;
}) {
  return (
    <section className="block" aria-label="Light">
      <h2>Light</h2>
      <Slider
        className="shine"
        value={through}
        onChange={onChange}
        minValue={0}
        maxValue={1}
        step={0.01}
        formatOptions={{ style: 'percent' }}
      >
        <Label>The other side shines through</Label>
        <SliderTrack className="track">
          <SliderThumb className="thumb" />
        </SliderTrack>
      </Slider>
      <div className="ends soft">
        <span>Side 1 only</span>
        <span>Both</span>
        <span>Side 2 only</span>
      </div>
    </section>
  );
}

function TrueSize({ width, onCorrected }: { readonly width: number; readonly onCorrected: () => void }) {
  const { units } = useJob().brief;
  const take = (typed: string) => {
    const measured = readLength(typed, units);
    if (!measured.ok) return measured.fault.message;
    const length = points(measured.value);
    if (!(length > 0) || !correctTrueSize(width, length))
      return 'That is too far from its true width to be meant.';
    onCorrected();
    return undefined;
  };
  return (
    <section className="block" aria-label="True size">
      <h2>True size</h2>
      <p className="soft">
        The piece is {showLength(width, units)} wide. Hold a ruler against the screen, and if it measures
        otherwise, type what it measures.
      </p>
      <TakenField label="It measures" size="few" value={showLength(width, units)} take={take} />
    </section>
  );
}

/** The pieces in words, each to be picked up. */
function PickUp({ faults }: { readonly faults: readonly LightFault[] }) {
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
              aria-pressed={inHand === index}
              onPress={() => app.getState().takeInHand(inHand === index ? undefined : index)}
            >
              {nameInWords(position, index)}
              {faults.some((f) => f.positions.includes(index)) && <Sign tone="bad" />}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
