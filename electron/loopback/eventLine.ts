// The open line on which the loopback server tells the window what happens.
import type { ServerResponse } from 'node:http';
import type { Tell } from '../../shared/contract/host.ts';
import { GUARDS } from '../serve/policy.ts';

/** One line to the window; what happens while it is not open waits for the next. */
export class EventLine {
  #line: ServerResponse | undefined;
  #waiting: string[] = [];

  readonly tell: Tell = (event, told) => {
    const text = `${JSON.stringify({ event, told })}\n`;
    if (this.#line === undefined) this.#waiting.push(text);
    else this.#line.write(text);
  };

  /** Opens the line. An earlier one is ended: its window has been left or replaced. */
  open(response: ServerResponse): void {
    this.#line?.end();
    response.writeHead(200, {
      ...GUARDS,
      'content-type': 'application/x-ndjson',
      'cache-control': 'no-store',
    });
    response.flushHeaders();
    for (const text of this.#waiting) response.write(text);
    this.#waiting = [];
    this.#line = response;
    response.on('close', () => {
      if (this.#line === response) this.#line = undefined;
    });
  }

  end(): void {
    this.#line?.end();
    this.#line = undefined;
  }
}
