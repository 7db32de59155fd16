// Several designs in different quantities: which share a form, how many of each up, and how many sheets of each form.
import { useMemo, useState } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import {
  briefsOfGang,
  type GangCosts,
  type GangProposal,
  gangOrderOf,
} from '../../../shared/gang/gangJob.ts';
import { withPlan } from '../../../shared/job/takePlan.ts';
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { gangCostsOf } from '../../../shared/plan/gangCosts.ts';
import { takenPlanOf } from '../../../shared/plan/takeCandidate.ts';
import { Button } from '../../controls/Button.tsx';
import { FaultNote, Note } from '../../controls/Note.tsx';
import { layAnew } from '../../desk/opening.ts';
import { host } from '../../hostClient/host.ts';
import { useJob } from '../../state/store.ts';
import { GangForms } from './GangForms.tsx';
import './gang.css';
import { showMoney, showPercent } from '../../../shared/units/show.ts';

/** As long as a person likes to wait at a desk. */
const SEARCH_SECONDS = 20;

interface Props {
  /** The forms are laid out on its sheet, and cost what its sheets cost. */
  readonly candidate: PlanCandidate;
  readonly currency: string;
}

export function GangPanel({ candidate, currency }: Props) {
  const ordered = useJob().brief;
  const brief = useMemo(() => withPlan(ordered, takenPlanOf(candidate)), [ordered, candidate]);
  const [proposal, setProposal] = useState<GangProposal | undefined>();
  const [fault, setFault] = useState<Fault | undefined>();
  const [planning, setPlanning] = useState(false);
  const costs = useMemo(() => gangCostsOf(candidate), [candidate]);
  const order = useMemo(() => gangOrderOf(brief, costs), [brief, costs]);
  const plan = async () => {
    setPlanning(true);
    setFault(undefined);
    const answer = await host.gang.solve({ brief, ...costs, seconds: SEARCH_SECONDS });
    setPlanning(false);
    if (answer.ok) setProposal(answer.value);
    else setFault(answer.fault);
  };
  if (!order.ok) {
    return (
      <section className="read-panel plan-panel" aria-label="Gang run">
        <h3>Gang run</h3>
        <FaultNote fault={order.fault} tone="know" />
      </section>
    );
  }
  return (
    <section className="read-panel plan-panel" aria-label="Gang run">
      <h3>Gang run</h3>
      <p className="soft">{costsInWords(costs, currency, brief.pieces.length)}</p>
      <div className="gang-does">
        <Button onPress={() => void plan()} disabled={planning}>
          Share the pieces out over forms
        </Button>
        {planning && (
          <Button kind="quiet" onPress={() => void host.gang.stop()}>
            Take the best so far
          </Button>
        )}
        {planning && <span role="status">Looking for the least cost, {SEARCH_SECONDS} seconds at most…</span>}
      </div>
      {fault !== undefined && <FaultNote fault={fault} tone="know" />}
      {proposal !== undefined && (
        <>
          <Note tone={proposal.gap === 0 ? 'good' : 'know'}>{provenInWords(proposal, currency)}</Note>
          <GangForms
            proposal={proposal}
            currency={currency}
            lay={(form) => {
              const chosen = briefsOfGang(brief, proposal)[form];
              if (chosen !== undefined) void layAnew(chosen);
            }}
          />
        </>
      )}
    </section>
  );
}

function costsInWords({ sheetCost, formCost }: GangCosts, currency: string, pieces: number): string {
  return `The ${pieces} pieces can share forms in different numbers. In the chosen plan above, a sheet costs ${showMoney(sheetCost, currency)} and setting a form up ${showMoney(formCost, currency)}.`;
}

function provenInWords({ cost, gap, bound }: GangProposal, currency: string): string {
  const says = `${showMoney(cost, currency)} for the good sheets and the forms`;
  return gap === 0
    ? `${says}: proven to be the least.`
    : `${says}; no plan can cost less than ${showMoney(bound, currency)}, so at most ${showPercent(gap, 1)} could be saved.`;
}
