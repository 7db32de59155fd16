// The rail: the five stages of a job from top to bottom, in the order of work.
import type { ReactNode } from 'react';
import { ToggleButton, Toolbar } from 'react-aria-components';
import { useApp } from '../state/store.ts';
import { STAGES, type Stage } from '../state/viewState.ts';

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  art: 'Art',
  plan: 'Plan',
  bench: 'Bench',
  'light-table': 'Light table',
  run: 'Run',
};

const SIGNS: Readonly<Record<Stage, ReactNode>> = {
  art: (
    <>
      <path d="M5 3h10l4 4v14H5z" />
      <path d="M8 17l3-5 2.5 3.5L15 13l2 4z" />
    </>
  ),
  plan: (
    <>
      <path d="M4 3h16v18H4z" />
      <path d="M4 9h16M4 15h16M12 9v12" />
    </>
  ),
  bench: (
    <>
      <path d="M5 5h14v16H5z" />
      <path d="M8 10h4v4H8zM12 14h4v4h-4zM12 1.5v5M9.8 3.5 12 1.2l2.2 2.3" />
    </>
  ),
  'light-table': (
    <>
      <path d="M3 7h12v14H3z" />
      <path d="M9 3h12v14H9z" strokeDasharray="2.5 2" />
    </>
  ),
  run: (
    <>
      <path d="M6 3h12v9H6zM3 15h18M3 18h18M3 21h18" />
      <path d="M12 5.5v6.5M9.5 9.7 12 12.2l2.5-2.5" />
    </>
  ),
};

export function Rail() {
  const stage = useApp((s) => s.stage);
  const goTo = useApp((s) => s.goTo);
  const hasJob = useApp((s) => s.history !== undefined && s.screen === 'job');
  return (
    <nav className="rail" aria-label="Stages of the job">
      <Toolbar orientation="vertical" aria-label="Stages" className="stages">
        {STAGES.map((name) => (
          <ToggleButton
            key={name}
            className="stage-button"
            isSelected={hasJob && stage === name}
            isDisabled={!hasJob}
            onChange={() => goTo(name)}
          >
            <svg viewBox="0 0 24 24" aria-hidden="true">
              {SIGNS[name]}
            </svg>
            {STAGE_NAMES[name]}
          </ToggleButton>
        ))}
      </Toolbar>
    </nav>
  );
}
