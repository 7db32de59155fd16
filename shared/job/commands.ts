// The edits of a job, each with a name that undo can show, and each giving a new job or a refusal.
import type { Overs } from '../layout/count.ts';

/** What a person can do to a job. Positions are counted from 0; lengths are pt on side 1. */
export type Command =
  | { readonly do: 'move'; readonly positions: readonly number[]; readonly dx: number; readonly dy: number }
  | { readonly do: 'turn-heads'; readonly positions: readonly number[]; readonly quarters: number }
  | { readonly do: 'swap-faces'; readonly positions: readonly number[] }
  | {
      readonly do: 'duplicate';
      readonly positions: readonly number[];
      readonly dx: number;
      readonly dy: number;
    }
  | { readonly do: 'remove'; readonly positions: readonly number[] }
  | { readonly do: 'lay-out' }
  | { readonly do: 'retitle'; readonly title: string }
  | { readonly do: 'set-quantity'; readonly piece: string; readonly quantity: number }
  | { readonly do: 'set-overs'; readonly overs: Overs };

/** What the edit is called where undo and redo are offered. */
export function nameOfEdit(command: Command): string {
  const pieces = (positions: readonly number[]) =>
    positions.length === 1 ? 'piece' : `${positions.length} pieces`;
  switch (command.do) {
    case 'move':
      return `Move ${pieces(command.positions)}`;
    case 'turn-heads':
      return `Turn ${pieces(command.positions)}`;
    case 'swap-faces':
      return `Swap front and back of ${pieces(command.positions)}`;
    case 'duplicate':
      return `Duplicate ${pieces(command.positions)}`;
    case 'remove':
      return `Remove ${pieces(command.positions)}`;
    case 'lay-out':
      return 'Lay out the sheet';
    case 'retitle':
      return 'Rename the job';
    case 'set-quantity':
      return `Change the quantity of ${command.piece}`;
    case 'set-overs':
      return 'Change the overs';
  }
}
