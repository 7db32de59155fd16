// Where the job runs: every printer, paper, sheet and way of working side by side, and what the chosen one comes to.
import { useMemo, useState } from 'react';
import type { Library } from '../../../shared/library/library.ts';
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { isTaken } from '../../../shared/plan/isTaken.ts';
import { RANKINGS, type Ranking, rank } from '../../../shared/plan/rank.ts';
import { takenPlanOf } from '../../../shared/plan/takeCandidate.ts';
import { Button } from '../../controls/Button.tsx';
import { RadioButtons } from '../../controls/Choice.tsx';
import { app, useJob } from '../../state/store.ts';
import { GangPanel } from '../gang/GangPanel.tsx';
import { CandidateTable } from './CandidateTable.tsx';
import { ChosenCandidate } from './ChosenCandidate.tsx';
import { CostHatches, CostLegend } from './CostBar.tsx';
import './candidates.css';

const RANKING_NAMES: Readonly<Record<Ranking, string>> = {
  cost: 'Cheapest',
  time: 'Quickest',
  waste: 'Least waste',
};

interface Props {
  /** Whatever their order. */
  readonly candidates: readonly PlanCandidate[];
  readonly library: Library;
  /** How the coverage of the art is known, in words. */
  readonly inkSaid: string;
}

export function WhereItRuns({ candidates, library, inkSaid }: Props) {
  const { brief } = useJob();
  const [by, setBy] = useState<Ranking>('cost');
  const [all, setAll] = useState(false);
  const [pointed, point] = useState<string | undefined>();
  const ranked = useMemo(() => rank(candidates, by), [candidates, by]);
  const taken = ranked.find((candidate) => isTaken(candidate, brief));
  const chosen = ranked.find(({ id }) => id === pointed) ?? taken ?? ranked[0];
  const best = bestOfEach(ranked);
  const shown = all ? ranked : ranked.filter((c) => best.has(c) || c === chosen);
  return (
    <>
      <CostHatches />
      <section className="read-panel plan-panel candidates-panel" aria-label="Where it runs">
        <div className="candidates-head">
          <h3>Where it runs</h3>
          <Button kind="quiet" onPress={() => app.getState().openDialog({ is: 'library' })}>
            Printers and papers…
          </Button>
        </div>
        <div className="candidates-head">
          <RadioButtons
            label="Sort by"
            value={by}
            options={RANKINGS.map((value) => ({ value, label: RANKING_NAMES[value] }))}
            onChange={setBy}
          />
          <CostLegend />
        </div>
        <div className="candidates-scroll">
          <CandidateTable candidates={shown} chosen={chosen?.id} currency={library.currency} choose={point} />
        </div>
        <div className="candidates-foot">
          <p className="soft">
            {all ? 'All' : 'For each printer and paper the best of all'} {ranked.length} ways;{' '}
            {unbeatenInWords(ranked)}. {inkSaid}
          </p>
          {ranked.length > best.size && (
            <Button kind="quiet" onPress={() => setAll(!all)}>
              {all ? 'Show the best of each' : `Show all ${ranked.length}`}
            </Button>
          )}
        </div>
      </section>
      {chosen !== undefined && (
        <ChosenCandidate
          candidate={chosen}
          currency={library.currency}
          taken={chosen === taken}
          take={() => app.getState().perform({ do: 'take-plan', taken: takenPlanOf(chosen) })}
        />
      )}
      {chosen !== undefined && brief.pieces.length > 1 && (
        <GangPanel key={chosen.id} candidate={chosen} currency={library.currency} />
      )}
    </>
  );
}

/** The first of each printer on each paper. */
function bestOfEach(ranked: readonly PlanCandidate[]): ReadonlySet<PlanCandidate> {
  const found = new Map<string, PlanCandidate>();
  for (const candidate of ranked) {
    const key = `${candidate.printer.name}\n${candidate.paper.name}`;
    if (!found.has(key)) found.set(key, candidate);
  }
  return new Set(found.values());
}

function unbeatenInWords(candidates: readonly PlanCandidate[]): string {
  const count = candidates.filter((c) => c.unbeaten).length;
  return count === 1
    ? 'one is better than every other in cost, time or waste'
    : `${count} are not beaten by any other in cost, time and waste together`;
}
