// What there is to say and set of the piece in hand: how it is read, and whether the screen shows it at its true size.
import type { ReaderTurn } from '../../shared/geometry/head.ts';
import { points } from '../../shared/units/length.ts';
import { readLength } from '../../shared/units/read.ts';
import { showLength } from '../../shared/units/show.ts';
import { RadioButtons } from '../controls/Choice.tsx';
import { TakenField } from '../controls/Field.tsx';
import { app, useJob } from '../state/store.ts';
import type { HeldPiece } from './cardInHand.ts';
import { correctTrueSize } from './trueSize.ts';

export function AboutHeld({
  held,
  onCorrected,
}: {
  readonly held: HeldPiece;
  /** The true size has been corrected. */
  readonly onCorrected: () => void;
}) {
  return (
    <>
      <HowRead piece={held.piece} turned={held.turned} />
      <TrueSize width={held.size.w} onCorrected={onCorrected} />
    </>
  );
}

function HowRead({ piece, turned }: { readonly piece: string; readonly turned: ReaderTurn }) {
  return (
    <section className="block" aria-label="How it is read">
      <h2>How {piece} is read</h2>
      <RadioButtons<ReaderTurn>
        label="Its reader turns it"
        value={turned}
        options={[
          { value: 'head-to-head', label: 'Like a page' },
          { value: 'head-to-toe', label: 'Like a calendar' },
        ]}
        onChange={(chosen) => {
          if (chosen !== turned) app.getState().perform({ do: 'set-reader-turn', piece, turned: chosen });
        }}
      />
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
