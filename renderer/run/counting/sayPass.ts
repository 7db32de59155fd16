// What is printed in a pass, in the words of the person at the printer.
import type { SidePage } from '../../../shared/job/nameJobFiles.ts';
import type { Pass } from '../../../shared/run/events.ts';
import type { PrintRun } from '../../../shared/run/run.ts';

/** `sides`: which page of which file prints each side; empty where it is not known. */
export function sayPass({ plan }: PrintRun, pass: Pass, sides: readonly SidePage[]): readonly string[] {
  const file = sides.find((s) => s.side === pass);
  const from = file === undefined ? '' : ` from ${file.name}`;
  const what =
    plan.passes === 1 && plan.sides === 2
      ? `Print both sides${from}; the printer turns each sheet itself.`
      : `Print side ${pass}${from}.`;
  return [
    what,
    'Look at a sheet now and then: colour, register, scuffs. Put spoiled ones aside at once and count them.',
    pass < plan.passes
      ? 'When the pile is through, let it dry, then turn it.'
      : 'When the pile is through, let it dry before it is trimmed.',
  ];
}
