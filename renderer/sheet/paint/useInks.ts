// The colours that sheets are drawn with, followed as the window changes its look.
import { useEffect, useState } from 'react';
import { type Inks, readInks } from './inks.ts';

export function useInks(): Inks {
  const [inks, setInks] = useState(() => readInks(document.documentElement));
  useEffect(() => {
    const watch = new MutationObserver(() => setInks(readInks(document.documentElement)));
    watch.observe(document.documentElement, { attributes: true });
    return () => watch.disconnect();
  }, []);
  return inks;
}
