// Gang runs planned for the window: one at a time, each stopped when the person has seen enough or asks anew.
import type { GangAsk } from '../../shared/contract/ganging.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import { type GangProposal, gangOrderOf, proposeGang } from '../../shared/gang/gangJob.ts';
import { type Planning, startPlanning } from './gangTask.ts';

export class GangDesk {
  #planning: Planning | undefined;

  /** Plans until the best is proven, the time is over, or it is stopped. */
  async solve({ brief, seconds, ...costs }: GangAsk): Promise<Result<GangProposal>> {
    this.stop();
    const order = gangOrderOf(brief, costs);
    if (!order.ok) return order;
    const planning = startPlanning({ order: order.value, seconds });
    this.#planning = planning;
    const answer = await planning.outcome;
    if (this.#planning === planning) this.#planning = undefined;
    return answer.ok ? ok(proposeGang(brief, order.value, answer.value)) : answer;
  }

  /** Ends the planning under way, which then answers with its best plan so far. */
  stop(): void {
    this.#planning?.stop();
    this.#planning = undefined;
  }
}
