// The program behind the window has ended: nothing can be saved here any more, and nothing is lost.
import { Box } from '../controls/Box.tsx';
import { useApp } from '../state/store.ts';

export function HostGoneBox() {
  const hasJob = useApp((s) => s.history !== undefined);
  return (
    <Box title="The program has ended" width="narrow" urgent onClose={() => undefined}>
      <p>This window can no longer save, look through art, or send. Start Turnlay again.</p>
      {hasJob && <p>The job was kept as you last changed it and is offered when the program starts.</p>}
    </Box>
  );
}
