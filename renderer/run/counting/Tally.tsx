// Where the sheets are: one figure for each pile.
import type { PrintRun } from '../../../shared/run/run.ts';
import { countSpoiled, saySpoiled } from '../../../shared/run/sheets.ts';

export function Tally({ run: { plan, sheets } }: { readonly run: PrintRun }) {
  const piles = [
    { name: 'Blank', count: sheets.blank },
    ...(plan.passes === 2
      ? [
          { name: 'Side 1 printed', count: sheets.side1 },
          { name: 'Turned', count: sheets.turned },
        ]
      : []),
    { name: 'Finished', count: sheets.done },
    { name: 'Spoiled', count: countSpoiled(sheets) },
    { name: 'Loaded in all', count: sheets.loaded },
  ];
  const spoiled = saySpoiled(sheets);
  return (
    <>
      <dl className="count-tally" aria-label="Where the sheets are">
        {piles.map(({ name, count }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{count}</dd>
          </div>
        ))}
      </dl>
      {spoiled !== '' && <p className="soft">Spoiled: {spoiled}</p>}
    </>
  );
}
