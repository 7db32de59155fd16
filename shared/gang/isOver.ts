// The clock of a search that is told how long it may take.

/** Whether the time is over. Asked again and again, it says yes ever after it has once. */
export type IsOver = () => boolean;
