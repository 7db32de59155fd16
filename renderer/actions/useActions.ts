// How a part of the window offers its actions while it is on the screen, and how what is offered is drawn.
import { useLayoutEffect, useRef, useSyncExternalStore } from 'react';
import { type ActionsShown, actionBook, type Doings, type Page } from './actionBook.ts';

/** Offers these actions as long as the component is on the screen; each drawing of it writes them anew. */
export function useActions(doings: Doings): void {
  const page = useRef<Page | undefined>(undefined);
  useLayoutEffect(() => {
    const opened = actionBook.open();
    page.current = opened;
    return opened.tearOut;
  }, []);
  useLayoutEffect(() => page.current?.write(doings));
}

/** Which actions can be done now, and what they are called. */
export function useActionsShown(): ActionsShown {
  return useSyncExternalStore(actionBook.subscribe, actionBook.shown);
}
