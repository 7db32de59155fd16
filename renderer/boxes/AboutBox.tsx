// What the program is.
import { Answers, Box } from '../controls/Box.tsx';
import { Button } from '../controls/Button.tsx';
import { Mark } from '../controls/Mark.tsx';
import { useApp } from '../state/store.ts';

export function AboutBox({ onClose }: { readonly onClose: () => void }) {
  const version = useApp((s) => s.begun?.version);
  return (
    <Box title="Turnlay" width="narrow" onClose={onClose}>
      <div className="about">
        <Mark />
        <div>
          <p>
            Lays out, proves and sends two-sided jobs on cut sheets, so that every back lands behind its own
            front.
          </p>
          <p className="soft">Version {version}. Free to use, change and share under the MIT licence.</p>
        </div>
      </div>
      <Answers>
        <Button kind="main" onPress={onClose}>
          Done
        </Button>
      </Answers>
    </Box>
  );
}
