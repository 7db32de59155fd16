// Step and repeat: how often, how far apart, and which way from the chosen pieces.
import { useState } from 'react';
import type { Repeat } from '../../shared/bench/repeat.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Command } from '../../shared/job/commands.ts';
import { edit } from '../../shared/job/edit.ts';
import { type Length, points } from '../../shared/units/length.ts';
import { readLength } from '../../shared/units/read.ts';
import { showLength } from '../../shared/units/show.ts';
import { Button } from '../controls/Button.tsx';
import { type Option, RadioButtons } from '../controls/Choice.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import { Field } from '../controls/Field.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { app, useApp } from '../state/store.ts';
import { useSettledJob } from './useSettledJob.ts';

export function RepeatDialog({ onClose }: { readonly onClose: () => void }) {
  const job = useSettledJob();
  const positions = useApp((s) => s.selection);
  const { units, gutter } = job.brief;
  const usual = showLength(points(gutter), units);
  const [across, setAcross] = useState('2');
  const [along, setAlong] = useState('1');
  const [gapAcross, setGapAcross] = useState(usual);
  const [gapAlong, setGapAlong] = useState(usual);
  const [side, setSide] = useState<Repeat['towards'][0]>('right');
  const [end, setEnd] = useState<Repeat['towards'][1]>('tail');

  const lengths = [readLength(gapAcross, units), readLength(gapAlong, units)] as const;
  const command: Command = {
    do: 'repeat',
    positions,
    repeat: {
      across: Number(across),
      along: Number(along),
      gapAcross: lengthOr0(lengths[0]),
      gapAlong: lengthOr0(lengths[1]),
      towards: [side, end],
    },
  };
  const tried = edit(job, command);
  const readable = lengths[0].ok && lengths[1].ok;
  const repeat = () => {
    if (readable && app.getState().perform(command).ok) onClose();
  };
  return (
    <Dialog title="Step and repeat" onClose={onClose} width="narrow">
      <Direction
        label="Across the feed"
        count={across}
        onCount={setAcross}
        gap={gapAcross}
        onGap={setGapAcross}
        read={lengths[0]}
        towards={side}
        ways={[
          { value: 'left', label: 'Left' },
          { value: 'right', label: 'Right' },
        ]}
        onTowards={setSide}
        onEnter={repeat}
        autoFocus
      />
      <Direction
        label="Along the feed"
        count={along}
        onCount={setAlong}
        gap={gapAlong}
        onGap={setGapAlong}
        read={lengths[1]}
        towards={end}
        ways={[
          { value: 'lead', label: 'Lead' },
          { value: 'tail', label: 'Tail' },
        ]}
        onTowards={setEnd}
        onEnter={repeat}
      />
      {tried.ok ? (
        <p className="soft">{tried.value.arrangement.length - job.arrangement.length} pieces are added.</p>
      ) : (
        <FaultNote fault={tried.fault} />
      )}
      <DialogAnswers>
        <Button onPress={onClose}>Cancel</Button>
        <Button kind="main" onPress={repeat} disabled={!tried.ok || !readable}>
          Repeat
        </Button>
      </DialogAnswers>
    </Dialog>
  );
}

function lengthOr0(length: Result<Length>): number {
  return length.ok ? points(length.value) : 0;
}

interface DirectionProps<V extends string> {
  readonly label: string;
  readonly count: string;
  readonly onCount: (typed: string) => void;
  readonly gap: string;
  readonly onGap: (typed: string) => void;
  /** What the gap is understood to be. */
  readonly read: Result<Length>;
  readonly towards: V;
  readonly ways: readonly Option<V>[];
  readonly onTowards: (way: V) => void;
  readonly onEnter: () => void;
  readonly autoFocus?: boolean;
}

/** How often and how far apart in one direction, and which way. */
function Direction<V extends string>(props: DirectionProps<V>) {
  const { label, count, onCount, gap, onGap, read, towards, ways, onTowards, onEnter, autoFocus } = props;
  return (
    <div className="pair">
      <Field
        label={label}
        size="few"
        value={count}
        onChange={onCount}
        onEnter={onEnter}
        autoFocus={autoFocus ?? false}
      />
      <Field
        label="Gap"
        size="few"
        value={gap}
        onChange={onGap}
        wrong={read.ok ? undefined : read.fault.message}
        onEnter={onEnter}
      />
      <RadioButtons label="Towards" value={towards} options={ways} onChange={onTowards} />
    </div>
  );
}
