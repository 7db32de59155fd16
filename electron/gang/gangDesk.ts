// Gang runs planned for the window: one at a time, each stopped when the person has seen enough or asks anew.
import type { GangAsk } from '../../shared/contract/ganging.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import { type GangProposal, gangOrderOf, proposeGang } from '../../shared/gang/gangJob.ts';
import { planGang } from './gangTask.ts';

export class GangDesk {
  #underWay: AbortController | undefined;

  /** Plans until the best is proven, the time is over, or it is stopped. */
  async solve({ brief, seconds, ...costs }: GangAsk): Promise<Result<GangProposal>> {
    this.stop();
    const order = gangOrderOf(brief, costs);
    if (!order.ok) return order;
    const planning = new AbortController();
    this.#underWay = planning;
    const answer = await planGang({ order: order.value, seconds }, { signal: planning.signal });
    if (this.#underWay === planning) this.#underWay = undefined;
    return answer.ok ? ok(proposeGang(brief, order.value, answer.value)) : answer;
  }

  /** Ends the planning under way, which then answers with its best plan so far. */
  stop(): void {
    this.#underWay?.abort();
    this.#underWay = undefined;
  }
}
