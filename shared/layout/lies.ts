// Which lies a piece may take on the sheet.

/** `upright`: its head along the feed, either way; `on-its-side`: across the feed (say, for the grain); or `either`. */
export type Lies = 'upright' | 'on-its-side' | 'either';

export const LIES: readonly Lies[] = ['upright', 'on-its-side', 'either'];
