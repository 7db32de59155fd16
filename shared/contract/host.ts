// The host as the window holds it, and the handlers that the host must have: both follow from the list of calls.
import type { Result } from '../fault/result.ts';
import type { Dropped } from './art.ts';
import type { CallOf, Calls, Group } from './calls.ts';
import type { EventName, Events } from './events.ts';

/** What a call asks: one value, or nothing. */
export type Ask<G extends Group, C extends CallOf<G>> = Calls[G][C] extends () => unknown
  ? undefined
  : Calls[G][C] extends (ask: infer A) => unknown
    ? A
    : never;

/** A call as the window makes it. */
type Asking<F> = F extends (...ask: infer A) => infer R ? (...ask: A) => Promise<R> : never;

/** A file that was dropped on the window; a DOM `File` is one. */
export interface DroppedFile {
  readonly name: string;
  readonly size: number;
}

/** The host in the hands of the window: the same object in the desktop shell and in a browser. */
export type Host = { readonly [G in Group]: { readonly [C in CallOf<G>]: Asking<Calls[G][C]> } } & {
  /** Takes in a dropped file. */
  dropped(file: DroppedFile): Promise<Result<Dropped>>;
  /** Listens until the returned function is called. */
  on<E extends EventName>(event: E, listener: (told: Events[E]) => void): () => void;
};

/** A call as the host answers it. */
type Answering<F> = F extends (...ask: infer A) => infer R ? (...ask: A) => R | Promise<R> : never;

/** What the host must be able to answer. A handler that is missing or of the wrong type does not compile. */
export type Handlers = { readonly [G in Group]: { readonly [C in CallOf<G>]: Answering<Calls[G][C]> } };

/** How the host tells something to the window. */
export type Tell = <E extends EventName>(event: E, told: Events[E]) => void;
