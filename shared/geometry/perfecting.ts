// About which edge of the sheet a printer turns it, in the words of its own settings.
import type { Size } from './space.ts';
import type { Turn } from './turn.ts';

/**
 * The edge that lies along the axis of the turn. A square sheet counts as one that is fed along its long edge.
 *
 * @source ISO 32000-1, 12.2, Duplex: flip on the long edge or on the short edge.
 */
export function edgeOfTurn(turn: Turn, sheet: Size): 'long' | 'short' {
  return (turn === 'side-to-side') === sheet.h >= sheet.w ? 'long' : 'short';
}
