// Step and repeat: how often, how far apart, and which way from the chosen pieces.
import { useState } from 'react';
import type { Repeat } from '../../shared/bench/repeat.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Command } from '../../shared/job/commands.ts';
import { edit } from '../../shared/job/edit.ts';
import { type Length, points } from '../../shared/units/length.ts';
import { readLength } from '../../shared/units/read.ts';
import { showLength } from '../../shared/units/show.ts';
import { Answers, Box } from '../controls/Box.tsx';
import { Button } from '../controls/Button.tsx';
import { SideBySide } from '../controls/Choice.tsx';
import { Field } from '../controls/Field.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { app, useApp } from '../state/store.ts';
import { useSettledJob } from './useSettledJob.ts';

export function RepeatBox({ onClose }: { readonly onClose: () => void }) {
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
    <Box title="Step and repeat" onClose={onClose} width="narrow">
      <div className="pair">
        <Field
          label="Across the feed"
          size="few"
          value={across}
          onChange={setAcross}
          autoFocus
          onEnter={repeat}
        />
        <Field
          label="Gap"
          size="few"
          value={gapAcross}
          onChange={setGapAcross}
          wrong={lengths[0].ok ? undefined : lengths[0].fault.message}
          onEnter={repeat}
        />
        <SideBySide
          label="Towards"
          value={side}
          options={[
            { value: 'left', label: 'Left' },
            { value: 'right', label: 'Right' },
          ]}
          onChange={setSide}
        />
      </div>
      <div className="pair">
        <Field label="Along the feed" size="few" value={along} onChange={setAlong} onEnter={repeat} />
        <Field
          label="Gap"
          size="few"
          value={gapAlong}
          onChange={setGapAlong}
          wrong={lengths[1].ok ? undefined : lengths[1].fault.message}
          onEnter={repeat}
        />
        <SideBySide
          label="Towards"
          value={end}
          options={[
            { value: 'lead', label: 'Lead' },
            { value: 'tail', label: 'Tail' },
          ]}
          onChange={setEnd}
        />
      </div>
      {tried.ok ? (
        <p className="soft">{tried.value.arrangement.length - job.arrangement.length} pieces are added.</p>
      ) : (
        <FaultNote fault={tried.fault} />
      )}
      <Answers>
        <Button onPress={onClose}>Cancel</Button>
        <Button kind="main" onPress={repeat} off={!tried.ok || !readable}>
          Repeat
        </Button>
      </Answers>
    </Box>
  );
}

function lengthOr0(length: Result<Length>): number {
  return length.ok ? points(length.value) : 0;
}
