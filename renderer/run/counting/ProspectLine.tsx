// One clear line: whether the quantity can still be met, and how many more to print.
import { type ProspectSaid, sayProspect } from '../../../shared/run/prospect.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { type NoteTone, Sign } from '../../controls/Note.tsx';

const TONES: Readonly<Record<ProspectSaid['stands'], NoteTone>> = {
  'to-load': 'know',
  met: 'good',
  'can-be-met': 'good',
  just: 'ask',
  short: 'bad',
};

export function ProspectLine({ run }: { readonly run: PrintRun }) {
  const { stands, says } = sayProspect(run);
  return (
    <p className={`count-prospect ${stands}`} aria-live="polite">
      <Sign tone={TONES[stands]} />
      <span>{says}</span>
    </p>
  );
}
