// Files dragged over the window: where they go is shown, and they are taken in when they are let go.
import { useEffect, useState } from 'react';
import { takeDropped } from '../desk/addArt.ts';
import { useApp } from '../state/store.ts';

export function DropVeil() {
  const [over, setOver] = useState(false);
  const [reading, setReading] = useState(0);
  const hasJob = useApp((s) => s.history !== undefined && s.screen === 'job');
  useEffect(() => {
    const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') === true;
    const enter = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(false);
      const files = [...(event.dataTransfer?.files ?? [])];
      setReading((n) => n + 1);
      void takeDropped(files).finally(() => setReading((n) => n - 1));
    };
    document.addEventListener('dragenter', enter);
    document.addEventListener('dragover', enter);
    document.addEventListener('dragleave', leave);
    document.addEventListener('drop', drop);
    return () => {
      document.removeEventListener('dragenter', enter);
      document.removeEventListener('dragover', enter);
      document.removeEventListener('dragleave', leave);
      document.removeEventListener('drop', drop);
    };
  }, []);
  if (over) {
    return <p className="drop-veil">{hasJob ? 'Let go to add these to the job' : 'Let go to begin a job'}</p>;
  }
  return reading > 0 ? (
    <p className="drop-reading" role="status">
      Looking through the files…
    </p>
  ) : null;
}
