// What a hand does on the bench just now, for the canvas to draw and for words to tell.
import { createStore } from 'zustand/vanilla';
import type { Gesture } from './scene.ts';

/** None while nothing is dragged. */
export const benchGesture = createStore<{ readonly gesture: Gesture | undefined }>(() => ({
  gesture: undefined,
}));
