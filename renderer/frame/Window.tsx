// The window: its bar, the rail of stages, what is shown of the job, and the boxes over it.
import { useEffect } from 'react';
import { BriefForm } from '../brief/BriefForm.tsx';
import { OpenDialogs } from '../dialogs/OpenDialogs.tsx';
import { useApp } from '../state/store.ts';
import { Bar } from './Bar.tsx';
import { DropVeil } from './DropVeil.tsx';
import { FaultBar } from './FaultBar.tsx';
import { FrameActions } from './FrameActions.tsx';
import { useKeys } from './keysHeard.ts';
import { Rail } from './Rail.tsx';
import { StageShown } from './StageShown.tsx';
import { Start } from './Start.tsx';
import './frame.css';

export function Window() {
  const screen = useApp((s) => s.screen);
  const hasJob = useApp((s) => s.history !== undefined);
  const theme = useApp((s) => s.settings.theme);
  useKeys();
  useSurround(theme);
  return (
    <div className="window">
      <FrameActions />
      <Bar />
      <Rail />
      <main className="shown">
        <FaultBar />
        {screen === 'brief' ? <BriefForm /> : screen === 'job' && hasJob ? <StageShown /> : <Start />}
      </main>
      <Said />
      <DropVeil />
      <OpenDialogs />
    </div>
  );
}

/** Speaks what was done to those who cannot see it. */
function Said() {
  const said = useApp((s) => s.said);
  return (
    <div className="unseen" role="status">
      {said}
    </div>
  );
}

function useSurround(theme: 'as-system' | 'light' | 'dark') {
  useEffect(() => {
    const system = matchMedia('(prefers-color-scheme: dark)');
    const show = () => {
      const dark = theme === 'dark' || (theme === 'as-system' && system.matches);
      document.documentElement.dataset.surround = dark ? 'dark' : 'light';
    };
    show();
    system.addEventListener('change', show);
    return () => system.removeEventListener('change', show);
  }, [theme]);
}
