// The channels between the preload and the main program of the desktop shell: one for each call and each event.
import type { Group } from './calls.ts';
import type { EventName } from './events.ts';

export function callChannel(group: Group, call: string): string {
  return `turnlay:call:${group}.${call}`;
}

export function eventChannel(event: EventName): string {
  return `turnlay:event:${event}`;
}

/** Carries the path of a dropped file; only the preload can learn one, from a real drop. */
export const DROPPED_CHANNEL = 'turnlay:dropped';
