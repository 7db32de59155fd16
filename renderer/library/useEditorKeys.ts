// Undo and redo by their keys while the library is open: the fields undo their own text, everything else the last edit.
import { useEffect } from 'react';
import { actionFor } from '../actions/keys.ts';
import { app } from '../state/store.ts';
import type { Editor } from './editor.ts';

export function useEditorKeys({ undo, redo }: Editor): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const { begun, dialogs } = app.getState();
      const isField = event.target instanceof HTMLInputElement && event.target.type === 'text';
      if (begun === undefined || isField || dialogs.at(-1)?.is !== 'library') return;
      const action = actionFor(event, begun);
      if (action === 'undo') undo();
      if (action === 'redo') redo();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [undo, redo]);
}
