// How many pixels of the device make a px of the window: it changes when the window goes to another screen.
import { useSyncExternalStore } from 'react';

export function usePixelRatio(): number {
  return useSyncExternalStore(listen, () => devicePixelRatio);
}

/** A query can only tell that the ratio it asks for no longer holds, so each change asks anew. */
function listen(changed: () => void): () => void {
  let stop = () => {};
  const ask = () => {
    stop();
    const query = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
    const change = () => {
      ask();
      changed();
    };
    query.addEventListener('change', change);
    stop = () => query.removeEventListener('change', change);
  };
  ask();
  return () => stop();
}
