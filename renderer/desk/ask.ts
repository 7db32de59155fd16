// Asking the person: a question in a dialog, answered with one of its answers.
import type { QuestionShown } from '../state/dialogs.ts';
import { app } from '../state/store.ts';

/** The answer that was given; the first one where the dialog was closed without any. */
export function ask(question: QuestionShown): Promise<string> {
  return new Promise((resolve) => {
    const dialog = {
      is: 'question' as const,
      question,
      answer: (is: string) => {
        app.getState().closeDialog(dialog);
        resolve(is);
      },
    };
    app.getState().openDialog(dialog);
  });
}
