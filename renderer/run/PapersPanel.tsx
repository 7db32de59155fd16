// The papers of the job: run sheet, dummy, cutting order and open job ticket, written into a folder and printed from there.
import { useState } from 'react';
import type { Papers } from '../../shared/contract/papers.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { useActions } from '../actions/useActions.ts';
import { Button } from '../controls/Button.tsx';
import { Select } from '../controls/Choice.tsx';
import { FaultNote, Note } from '../controls/Note.tsx';
import { savePapers } from '../desk/papers.ts';
import { useApp, useJob } from '../state/store.ts';

/** Stands for no paper among the names of papers, none of which is empty. */
const NOT_SAID = '';

interface Outcome {
  readonly job: Job;
  readonly papers: Result<Papers>;
}

export function PapersPanel() {
  const job = useJob();
  const papers = useApp((s) => s.library.papers);
  const [chosen, setPaper] = useState<string | undefined>();
  const planned = papers.find(({ name }) => name === job.brief.plan?.paper)?.name;
  const paper = chosen ?? planned ?? NOT_SAID;
  const [busy, setBusy] = useState(false);
  const [outcome, setOutcome] = useState<Outcome | undefined>(undefined);
  const write = async () => {
    setBusy(true);
    const written = await savePapers(job, paper === NOT_SAID ? undefined : paper);
    setBusy(false);
    if (written !== undefined) setOutcome({ job, papers: written });
  };
  useActions({ 'write-papers': { run: () => void write(), can: !busy } });
  return (
    <section className="read-panel run-panel" aria-label="Papers">
      <h3>On paper</h3>
      <p>
        The run sheet with the dummy of both sides, the dummy to hold, the cutting order, and the job as an
        open ticket and as tables.
      </p>
      <div className="run-does run-papers">
        <Select
          label="Paper that is loaded"
          value={paper}
          options={[
            { value: NOT_SAID, label: 'Not specified' },
            ...papers.map(({ name }) => ({ value: name, label: name })),
          ]}
          onChange={setPaper}
        />
        <Button disabled={busy} onPress={() => void write()}>
          Write the run sheet…
        </Button>
      </div>
      <div aria-live="polite">{outcome !== undefined && <Written outcome={outcome} now={job} />}</div>
    </section>
  );
}

function Written({ outcome, now }: { readonly outcome: Outcome; readonly now: Job }) {
  const { job, papers } = outcome;
  if (!papers.ok) return <FaultNote fault={papers.fault} />;
  const { folder, names, notices } = papers.value;
  return (
    <>
      <Note tone="good">
        Written into <strong>{folder.place}</strong>. Print the run sheet on plain paper, one side only.
      </Note>
      <ul className="run-files" aria-label="Papers written">
        {names.map((name) => (
          <li key={name}>
            <code>{name}</code>
          </li>
        ))}
      </ul>
      {notices.map((notice) => (
        <Note key={notice} tone="know">
          {notice}
        </Note>
      ))}
      {job !== now && (
        <Note tone="ask">The job has changed since. These papers are of the job as it was.</Note>
      )}
    </>
  );
}
