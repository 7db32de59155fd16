// What a hand does on the bench just now, for the canvas to draw and for words to tell.
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Gesture } from './scene.ts';

export type GestureStore = StoreApi<{ readonly gesture: Gesture | undefined }>;

/** None while nothing is dragged. */
export const benchGesture: GestureStore = createStore(() => ({ gesture: undefined }));
