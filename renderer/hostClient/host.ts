// The host that this window asks: the one the desktop shell has given it, else the server it was loaded from.
import type { Host } from '../../shared/contract/host.ts';
import { joinLoopback } from './loopbackHost.ts';

declare global {
  interface Window {
    /** Set by the preload of the desktop shell. */
    readonly turnlay?: Host;
  }
}

export const host: Host = window.turnlay ?? joinLoopback();
