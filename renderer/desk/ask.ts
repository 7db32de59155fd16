// Asking the person: a question in a box, answered with one of its answers.
import type { Question } from '../state/boxes.ts';
import { app } from '../state/store.ts';

/** The answer that was given; the first one where the box was closed without any. */
export function ask(question: Question): Promise<string> {
  return new Promise((resolve) => {
    const box = {
      is: 'question' as const,
      question,
      answer: (is: string) => {
        app.getState().closeBox(box);
        resolve(is);
      },
    };
    app.getState().openBox(box);
  });
}
