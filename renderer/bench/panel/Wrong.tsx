// What is wrong with the sheet, in words; each line chooses the pieces it is about.
import { Button } from 'react-aria-components';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import { Note, Sign } from '../../controls/Note.tsx';
import { app } from '../../state/store.ts';
import { useFindings } from '../findings.ts';
import { spoils } from '../paint/paintMarks.ts';

/** More lines than this are counted, not listed. */
const MAX_LINES = 40;

export function Wrong() {
  const findings = useFindings((all) => all);
  return (
    <section className="block" aria-label="Check of the sheet">
      <h2>{inWords(findings)}</h2>
      {findings.length === 0 ? (
        <Note tone="good">Nothing overlaps, nothing is cut off, every back lies behind its front.</Note>
      ) : (
        <ul className="wrongs">
          {findings.slice(0, MAX_LINES).map((finding) => (
            <li key={`${finding.kind} ${finding.positions.join(' ')}`}>
              <Button
                className="wrong-line"
                isDisabled={finding.positions.length === 0}
                onPress={() => app.getState().select(finding.positions)}
              >
                <Sign tone={spoils(finding) ? 'bad' : 'ask'} />
                <span>{finding.message}</span>
              </Button>
            </li>
          ))}
          {findings.length > MAX_LINES && (
            <li className="soft">and {findings.length - MAX_LINES} more of these</li>
          )}
        </ul>
      )}
    </section>
  );
}

function inWords(findings: readonly LayoutFinding[]): string {
  if (findings.length === 0) return 'No faults found';
  return findings.length === 1 ? 'One thing to look at' : `${findings.length} things to look at`;
}
