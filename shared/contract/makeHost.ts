// Builds the host that the window holds, every call by its own name, on whatever carries the calls.
import { CALLS, type Group } from './calls.ts';
import type { Host } from './host.ts';

/** Carries one call to the host and its answer back. */
export type Carry = (group: Group, call: string, ask: unknown) => Promise<unknown>;

/** The host, with a function for each call of the contract. */
export function makeHost(carry: Carry, rest: Pick<Host, 'dropped' | 'on'>): Host {
  const groups = (Object.keys(CALLS) as Group[]).map((group) => [
    group,
    Object.fromEntries(
      Object.keys(CALLS[group]).map((call) => [call, (ask?: unknown) => carry(group, call, ask)]),
    ),
  ]);
  return { ...(Object.fromEntries(groups) as Omit<Host, 'dropped' | 'on'>), ...rest };
}
