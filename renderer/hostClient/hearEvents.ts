// Hearing what the loopback server tells: one line of JSON for each event, for as long as the page is there.
import type { EventName, Events } from '../../shared/contract/events.ts';
import { LOOPBACK } from '../../shared/contract/loopback.ts';

/** Hears until the server is gone, and tells that too. A page that is left hears nothing more. */
export async function hearEvents(
  headers: Readonly<Record<string, string>>,
  tell: (event: EventName, told: Events[EventName]) => void,
): Promise<void> {
  const left = new AbortController();
  addEventListener('pagehide', () => left.abort());
  try {
    const response = await fetch(LOOPBACK.events, { headers, signal: left.signal });
    if (!response.ok || response.body === null)
      throw new Error(`The events were refused: ${response.status}`);
    let rest = '';
    const text = response.body.pipeThrough(new TextDecoderStream());
    for (const reader = text.getReader(); ; ) {
      const { done, value } = await reader.read();
      if (done) break;
      const lines = (rest + value).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) hear(line, tell);
    }
  } catch {
    // A broken line and a refused one mean the same: there is no host to ask.
  }
  if (!left.signal.aborted) tell('host-gone', null);
}

function hear(line: string, tell: (event: EventName, told: Events[EventName]) => void): void {
  const { event, told } = JSON.parse(line) as { readonly event: EventName; readonly told: Events[EventName] };
  tell(event, told);
}
