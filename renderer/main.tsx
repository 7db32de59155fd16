// Where the window starts.
import { createRoot } from 'react-dom/client';
import { beginWindow } from './desk/begin.ts';
import { HostMissing } from './frame/HostMissing.tsx';
import { Window } from './frame/Window.tsx';
import './look/tokens.css';
import './look/base.css';

const place = document.getElementById('window');
if (place === null) throw new Error('The page has no place for the window');
const root = createRoot(place);
beginWindow().then(
  () => root.render(<Window />),
  (error: unknown) =>
    root.render(<HostMissing says={error instanceof Error ? error.message : String(error)} />),
);
