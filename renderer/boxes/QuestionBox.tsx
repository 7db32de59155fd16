// A question that must be answered before work goes on.
import { Answers, Box } from '../controls/Box.tsx';
import { Button } from '../controls/Button.tsx';
import type { Question } from '../state/boxes.ts';

export function QuestionBox({
  question,
  answer,
}: {
  readonly question: Question;
  readonly answer: (is: string) => void;
}) {
  const { title, says, answers, urgent = false } = question;
  return (
    <Box title={title} width="narrow" urgent={urgent} onClose={() => answer(answers[0]?.is ?? '')}>
      <p>{says}</p>
      <Answers>
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
      </Answers>
    </Box>
  );
}
