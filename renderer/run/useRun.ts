// The runs of the open job: asked for when a job with a file is on the table.
import { useEffect } from 'react';
import type { RunLog } from '../../shared/run/logText.ts';
import type { PrintRun } from '../../shared/run/run.ts';
import { loadRuns } from '../desk/runs.ts';
import { useApp } from '../state/store.ts';

/** The log of the open job; none for a job that was never saved, and until the host has answered. */
export function useRunLog(): RunLog | undefined {
  const file = useApp((s) => s.file?.file);
  const noted = useApp((s) => s.runLog);
  useEffect(() => {
    if (file !== undefined) void loadRuns(file);
  }, [file]);
  return noted !== undefined && noted.file === file ? noted.log : undefined;
}

/** The run that is worked on. */
export function runOf(log: RunLog | undefined): PrintRun | undefined {
  return log?.book.runs.at(-1);
}
