// Hearing the keys of the whole window, and leaving those alone that somebody is typing with.
import { useEffect } from 'react';
import type { ActionName } from '../../shared/contract/actions.ts';
import { actionBook } from '../actions/actionBook.ts';
import { actionFor, typesInFields } from '../actions/keys.ts';
import { app } from '../state/store.ts';

/** Fields undo and choose their own text. */
const FIELDS_OWN: ReadonlySet<ActionName> = new Set(['undo', 'redo', 'choose-all']);

export function useKeys(): void {
  useEffect(() => {
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
}

function press(event: KeyboardEvent): void {
  const { begun } = app.getState();
  if (begun === undefined || event.defaultPrevented || event.isComposing) return;
  const action = actionFor(event, begun);
  if (action === undefined) return;
  const typed = typesInFields(action, begun);
  const at = event.target instanceof Element ? event.target : document.body;
  if (at.closest('[role="menu"], .popover') !== null && typed) return;
  if (isTypedInto(at) && (typed || FIELDS_OWN.has(action) || event.altKey)) return;
  // The browser would do something of its own with it, even where the action cannot be done.
  if (!typed) event.preventDefault();
  if (document.querySelector('.veil') !== null) return;
  if (actionBook.run(action)) event.preventDefault();
}

function isTypedInto(element: Element): boolean {
  return element.matches('textarea, [contenteditable="true"], input:not([type="radio"], [type="checkbox"])');
}
