// Answering one call of the window: known, its request checked, then handed to its handler.
import { z } from 'zod';
import { ASK_SCHEMAS } from '../../shared/contract/askSchemas.ts';
import { CALLS, type Group } from '../../shared/contract/calls.ts';
import type { Handlers } from '../../shared/contract/host.ts';

/** A call that the contract does not know, or a request that it does not allow: a mistake of the window's. */
export class BadCall extends Error {}

/** Gives the handler's answer. Throws `BadCall`, and whatever a handler throws. */
export async function answerCall(
  handlers: Handlers,
  group: string,
  call: string,
  ask: unknown,
): Promise<unknown> {
  if (!isGroup(group) || !Object.hasOwn(CALLS[group], call)) {
    throw new BadCall(`There is no call ${group}.${call}.`);
  }
  const schema = (ASK_SCHEMAS[group] as Readonly<Record<string, z.ZodType>>)[call];
  const handler = (handlers[group] as Readonly<Record<string, (ask: unknown) => unknown>>)[call];
  const checked = schema?.safeParse(ask);
  if (handler === undefined || checked === undefined) throw new Error(`${group}.${call} has no handler`);
  if (!checked.success) throw new BadCall(`${group}.${call}: ${z.prettifyError(checked.error)}`);
  return handler(checked.data);
}

function isGroup(group: string): group is Group {
  return Object.hasOwn(CALLS, group);
}
