// What finished runs teach, and the button that takes it into the library.
import { useEffect, useState } from 'react';
import { learnFrom } from '../../../shared/run/learn.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { takeLearned } from '../../../shared/run/takeLearned.ts';
import { Button } from '../../controls/Button.tsx';
import { Note } from '../../controls/Note.tsx';
import { keepLibrary } from '../../desk/library.ts';
import { allRuns } from '../../desk/runs.ts';
import { app, useApp } from '../../state/store.ts';

/** `run`: the one that is looked at; when it changes, all are gathered anew. */
export function LearnPanel({ run }: { readonly run: PrintRun }) {
  const library = useApp((s) => s.library);
  const [runs, setRuns] = useState<readonly PrintRun[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the run is among all runs.
  useEffect(() => {
    let wanted = true;
    void allRuns().then((all) => {
      if (wanted) setRuns(all);
    });
    return () => {
      wanted = false;
    };
  }, [run]);
  const learned = learnFrom(runs, library);
  const { changes, waiting, library: after } = takeLearned(library, learned);
  const take = async () => {
    const fault = await keepLibrary(after);
    if (fault === undefined) app.getState().say('Taken into the library.');
    else app.getState().report(fault);
  };
  return (
    <section className="read-panel run-panel" aria-label="What runs teach">
      <h3>What {learned.runs === 1 ? 'one finished run teaches' : `${learned.runs} finished runs teach`}</h3>
      {changes.map((change) => (
        <Note key={change} tone="good">
          {change}
        </Note>
      ))}
      {changes.length === 0 && <p>The library says already what they show.</p>}
      {waiting.map((says) => (
        <Note key={says} tone="know">
          {says}
        </Note>
      ))}
      {changes.length > 0 && (
        <div className="run-does">
          <Button onPress={() => void take()}>Take into the library</Button>
        </div>
      )}
    </section>
  );
}
