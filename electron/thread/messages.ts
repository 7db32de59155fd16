// What a thread and its starter say to each other: one task there, and back what happens on the way and what came of it.

/** To the thread: its task, or that it should stop as soon as all is in order. */
export type Asked<A> = { readonly task: A } | { readonly cancel: true };

/** From the thread. */
export type Said<T, W> = { readonly onTheWay: W } | { readonly outcome: T };
