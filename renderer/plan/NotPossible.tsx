// What is not possible, and why.
import type { Refused } from '../../shared/plan/candidate.ts';
import { FaultNote } from '../controls/Note.tsx';
import { sizeInWords } from './candidates/inWords.ts';
import { nameWork } from './nameWork.ts';

/** A person who wonders why something is missing opens it. */
export function NotPossible({ refused }: { readonly refused: readonly Refused[] }) {
  if (refused.length === 0) return null;
  return (
    <details className="read-panel plan-panel not-possible">
      <summary>
        {refused.length === 1 ? 'One way is' : `${refused.length} ways are`} not possible. Why?
      </summary>
      <ul>
        {refused.map((r) => (
          <li
            key={[
              r.printer,
              r.feed,
              r.paper,
              r.sheet && sizeInWords(r.sheet),
              r.works.map(nameWork),
              r.fault.message,
            ].join()}
          >
            <strong>
              {[r.printer, r.feed, r.paper, r.sheet && sizeInWords(r.sheet)].filter(Boolean).join(', ')}
            </strong>
            {r.works.length > 0 && <span className="soft">{r.works.map(nameWork).join('; ')}</span>}
            <FaultNote fault={r.fault} tone="know" />
          </li>
        ))}
      </ul>
    </details>
  );
}
