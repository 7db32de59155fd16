// Asking for a gang run: the brief, what sheets and forms cost, and how long may be planned.
import type { GangCosts } from '../gang/gangJob.ts';
import type { Brief } from '../job/brief.ts';

export interface GangAsk extends GangCosts {
  readonly brief: Brief;
  /** The best is proven within a second for a few pieces and short runs; else the gap is stated. */
  readonly seconds: number;
}
