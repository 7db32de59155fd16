// A question that must be answered before work goes on.

import { Button } from '../controls/Button.tsx';
import { Dialog, DialogAnswers } from '../controls/Dialog.tsx';
import type { QuestionShown } from '../state/dialogs.ts';

export function QuestionDialog({
  question,
  answer,
}: {
  readonly question: QuestionShown;
  readonly answer: (is: string) => void;
}) {
  const { title, says, answers, urgent = false } = question;
  return (
    <Dialog title={title} width="narrow" urgent={urgent} onClose={() => answer(answers[0]?.is ?? '')}>
      <p>{says}</p>
      <DialogAnswers>
        {answers.map((a, i) => (
          <Button
            key={a.is}
            kind={i === answers.length - 1 ? 'main' : 'plain'}
            autoFocus={i === 0}
            onPress={() => answer(a.is)}
          >
            {a.label}
          </Button>
        ))}
      </DialogAnswers>
    </Dialog>
  );
}
