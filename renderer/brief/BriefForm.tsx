// The form of a brief: pieces, sheet and way of working, with what the art leaves open asked first.
import { useEffect, useRef, useState } from 'react';
import type { Fault } from '../../shared/fault/result.ts';
import { Button } from '../controls/Button.tsx';
import { RadioButtons } from '../controls/Choice.tsx';
import { Field } from '../controls/Field.tsx';
import { FaultNote } from '../controls/Note.tsx';
import { addArt } from '../desk/addArt.ts';
import { leaveBrief } from '../desk/startBrief.ts';
import type { BriefDraft } from '../draft/briefDraft.ts';
import type { Drafting } from '../state/draftState.ts';
import { app, useApp } from '../state/store.ts';
import { ArtNotices } from './ArtNotices.tsx';
import { layBrief } from './layDraft.ts';
import { Pieces } from './Pieces.tsx';
import type { PartProps } from './partProps.ts';
import { Questions } from './Questions.tsx';
import { readDraft } from './readDraft.ts';
import { SheetFields } from './SheetFields.tsx';
import { WorkFields } from './WorkFields.tsx';
import './brief.css';

export function BriefForm() {
  const drafting = useApp((s) => s.drafting);
  return drafting === undefined ? null : <Form drafting={drafting} />;
}

function Form({ drafting }: { readonly drafting: Drafting }) {
  const { draft, changes, art } = drafting;
  const [tried, setTried] = useState(0);
  const [busy, setBusy] = useState(false);
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const form = useRef<HTMLFormElement>(null);
  const read = readDraft(draft);
  const wrongs = tried === 0 || read.ok ? {} : read.fault;
  const change = (changed: Partial<BriefDraft>) => {
    setFault(undefined);
    app.getState().draftThis({ ...drafting, draft: { ...draft, ...changed } });
  };
  useEffect(() => {
    if (tried > 0)
      form.current?.querySelector<HTMLElement>('[data-invalid] input, input[aria-invalid]')?.focus();
  }, [tried]);
  const layOut = async () => {
    if (!read.ok) return setTried(tried + 1);
    setBusy(true);
    setFault(await layBrief(read.value, changes));
    setBusy(false);
  };
  const part: PartProps = { draft, change, wrongs };
  return (
    <form
      ref={form}
      className="brief"
      aria-label={changes ? 'The brief of the job' : 'A new job'}
      onSubmit={(event) => {
        event.preventDefault();
        void layOut();
      }}
    >
      <div className="brief-fields">
        <div className="brief-head">
          <h2>{changes ? 'Change the brief' : 'New job'}</h2>
          <RadioButtons
            label="Lengths without a unit are in"
            value={draft.units}
            options={[
              { value: 'in', label: 'inches' },
              { value: 'mm', label: 'millimetres' },
              { value: 'pt', label: 'points' },
            ]}
            onChange={(units) => change({ units })}
          />
        </div>
        <Field
          label="Name of the job"
          value={draft.title}
          onChange={(title) => change({ title })}
          wrong={wrongs.title}
          autoFocus={draft.title === ''}
        />
        <ArtNotices art={art} />
        <Questions drafting={drafting} />
        <Pieces {...part} art={art} />
        <SheetFields {...part} />
        <WorkFields {...part} />
      </div>
      <footer className="brief-foot">
        <div className="brief-says" role="alert">
          {fault !== undefined && <FaultNote fault={fault} />}
          {Object.keys(wrongs).length > 0 && (
            <p className="brief-wrong">{inWords(Object.keys(wrongs).length)}</p>
          )}
        </div>
        <Button onPress={() => void addArt()}>Take in art…</Button>
        <Button onPress={leaveBrief}>Cancel</Button>
        <Button kind="main" disabled={busy} submits>
          {busy ? 'Laying out…' : 'Lay out'}
        </Button>
      </footer>
    </form>
  );
}

function inWords(count: number): string {
  return count === 1 ? 'One field is still to be set right.' : `${count} fields are still to be set right.`;
}
