// The bar at the head of the window: the menus, the job that is open, undoing, and the surround.
import { Button, Tooltip, TooltipTrigger } from 'react-aria-components';
import type { ActionName } from '../../shared/contract/actions.ts';
import { actionBook, labelOf } from '../actions/actionBook.ts';
import { writeKeys } from '../actions/keys.ts';
import { useActionsShown } from '../actions/useActions.ts';
import { isUnsaved } from '../state/deskState.ts';
import { useApp } from '../state/store.ts';
import { MenuBar } from './MenuBar.tsx';

export function Bar() {
  const desktop = useApp((s) => s.begun?.shell === 'desktop');
  return (
    <header className="bar">
      {desktop ? <span /> : <MenuBar />}
      <JobName />
      <div className="tools">
        <Tool action="undo">
          <path d="M8 4 3.5 8.5 8 13M4 8.5h8a4.5 4.5 0 0 1 0 9H9" />
        </Tool>
        <Tool action="redo">
          <path d="m12 4 4.5 4.5L12 13m4-4.5H8a4.5 4.5 0 0 0 0 9h3" />
        </Tool>
        <Tool action="switch-surround">
          <circle cx="10" cy="10" r="6.5" />
          <path d="M10 3.5v13a6.5 6.5 0 0 0 0-13z" fill="currentColor" />
        </Tool>
      </div>
    </header>
  );
}

function JobName() {
  const title = useApp((s) => (s.screen === 'job' ? s.history?.present.brief.title : undefined));
  const unsaved = useApp(isUnsaved);
  const file = useApp((s) => s.file?.name);
  if (title === undefined) return <div className="job-name" />;
  return (
    <div className="job-name">
      <span className="title" title={title}>
        {title}
      </span>
      <span className="soft">
        {file === undefined ? 'not saved yet' : unsaved ? 'changed since saved' : 'saved'}
      </span>
    </div>
  );
}

function Tool({ action, children }: { readonly action: ActionName; readonly children: React.ReactNode }) {
  const shown = useActionsShown();
  const keyboard = useApp((s) => s.begun);
  const label = labelOf(action, shown);
  return (
    <TooltipTrigger delay={400}>
      <Button
        className="tool"
        aria-label={label}
        isDisabled={shown.disabled.includes(action)}
        onPress={() => actionBook.run(action)}
      >
        <svg viewBox="0 0 20 20" aria-hidden="true">
          {children}
        </svg>
      </Button>
      <Tooltip className="tooltip" placement="bottom">
        {label}
        {keyboard === undefined ? null : <kbd>{writeKeys(action, keyboard).join(' ')}</kbd>}
      </Tooltip>
    </TooltipTrigger>
  );
}
