// The host behind the loopback server, for a window in a browser.

import type { Dropped } from '../../shared/contract/art.ts';
import type { EventName, Events } from '../../shared/contract/events.ts';
import type { Host } from '../../shared/contract/host.ts';
import { LOOPBACK } from '../../shared/contract/loopback.ts';
import { makeHost } from '../../shared/contract/makeHost.ts';
import type { Result } from '../../shared/fault/result.ts';
import { hearEvents } from './hearEvents.ts';
import { joinSession } from './session.ts';

/** Joins the server that this page came from. Calls wait until the session stands. */
export function joinLoopback(): Host {
  const session = joinSession();
  const listeners = new Map<EventName, Set<(told: never) => void>>();
  const tell = (event: EventName, told: Events[EventName]) => {
    for (const listener of listeners.get(event) ?? []) listener(told as never);
  };
  session.then(
    (headers) => hearEvents(headers, tell),
    () => tell('host-gone', null),
  );

  const post = async (path: string, type: string, body: BodyInit): Promise<unknown> => {
    const headers = { ...(await session), 'content-type': type };
    const response = await fetch(path, { method: 'POST', headers, body });
    const answer = (await response.json()) as { readonly answer?: unknown; readonly mistake?: string };
    if (!response.ok) throw new Error(answer.mistake ?? `The host answered ${response.status}.`);
    return answer.answer;
  };

  return makeHost(
    (group, call, ask) =>
      post(`${LOOPBACK.call}/${group}/${call}`, 'application/json', JSON.stringify({ ask })),
    {
      dropped: async (file) =>
        (await post(
          `${LOOPBACK.dropped}?name=${encodeURIComponent(file.name)}`,
          'application/octet-stream',
          // As the file it is: the browser reads it while it sends, and its bytes are never held by the page.
          file as File,
        )) as Result<Dropped>,
      on: (event, listener) => {
        const known = listeners.get(event) ?? new Set();
        listeners.set(event, known.add(listener));
        return () => known.delete(listener);
      },
    },
  );
}
