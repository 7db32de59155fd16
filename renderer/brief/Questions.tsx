// What the art leaves open, asked in words with the likeliest answer chosen.
import { RadioButtons } from '../controls/Choice.tsx';
import { Note } from '../controls/Note.tsx';
import { propose, questionsOf } from '../desk/propose.ts';
import type { Drafting } from '../state/draftState.ts';
import { app } from '../state/store.ts';

export function Questions({ drafting }: { readonly drafting: Drafting }) {
  const questions = questionsOf(drafting);
  if (questions.length === 0) return null;
  const answer = (id: string, value: string) =>
    app.getState().draftThis(propose({ ...drafting, answers: { ...drafting.answers, [id]: value } }));
  return (
    <section className="brief-part" aria-label="What the art leaves open">
      <h3>What the art leaves open</h3>
      {questions.map((q) => (
        <Note key={q.id} tone="ask">
          <RadioButtons
            label={q.asks}
            value={drafting.answers[q.id] ?? q.answers[0]?.value}
            options={q.answers}
            onChange={(value) => answer(q.id, value)}
          />
        </Note>
      ))}
    </section>
  );
}
