// The edits of a job, each with a name that undo can show, and each giving a new job or a refusal.
import type { Alignment } from '../bench/align.ts';
import type { SheetAxis } from '../bench/axis.ts';
import type { Repeat } from '../bench/repeat.ts';
import type { Head, ReaderTurn } from '../geometry/head.ts';
import type { Work } from '../geometry/work.ts';
import type { Overs } from '../layout/count.ts';
import type { FaceName } from '../layout/position.ts';
import type { FoundArt, Job } from './job.ts';
import type { TakenPlan } from './takePlan.ts';

/** What a person can do to a job. Positions are counted from 0; lengths are pt on side 1. */
export type Command = ArrangementCommand | BriefCommand | OrderCommand;

/** Several positions at once; where one form serves both sides, each position and its partner count as one. */
interface Several {
  readonly positions: readonly number[];
}

export type ArrangementCommand =
  | (Several & { readonly do: 'move'; readonly dx: number; readonly dy: number })
  /** Puts the lower left corner of the trim on (x, y). */
  | { readonly do: 'place'; readonly position: number; readonly x: number; readonly y: number }
  | (Several & { readonly do: 'turn-heads'; readonly quarters: number })
  | (Several & { readonly do: 'swap-faces' })
  | (Several & { readonly do: 'duplicate'; readonly dx: number; readonly dy: number })
  | (Several & { readonly do: 'remove' })
  /** In line with one another, or with the sheet: its middle, or as near its edge as the bleed can be printed. */
  | (Several & { readonly do: 'align'; readonly by: Alignment; readonly to: 'one-another' | 'sheet' })
  /** Equal gaps between the outermost two, or gaps of this length from the first on. */
  | (Several & { readonly do: 'distribute'; readonly axis: SheetAxis; readonly gap?: number })
  | (Several & { readonly do: 'repeat'; readonly repeat: Repeat })
  /** One more of a piece, the lower left corner of its trim on (x, y). */
  | {
      readonly do: 'add';
      readonly piece: string;
      readonly face: FaceName;
      readonly x: number;
      readonly y: number;
      readonly head: Head;
    }
  | { readonly do: 'lay-out' };

export type BriefCommand =
  | { readonly do: 'retitle'; readonly title: string }
  | { readonly do: 'set-quantity'; readonly piece: string; readonly quantity: number }
  | { readonly do: 'set-overs'; readonly overs: Overs }
  /** The art of a face stands on its head: its page is turned half round, and its trim is where it was found then. */
  | {
      readonly do: 'turn-art';
      readonly piece: string;
      readonly face: FaceName;
      readonly found: Pick<FoundArt, 'trim' | 'said'>;
    }
  | { readonly do: 'set-reader-turn'; readonly piece: string; readonly turned: ReaderTurn };

export type OrderCommand =
  /** Lays the sheet out afresh for another way of working. */
  | { readonly do: 'set-work'; readonly work: Work }
  /** Lays the sheet out afresh for the printer, the paper and the way of working of a plan. */
  | { readonly do: 'take-plan'; readonly taken: TakenPlan }
  | { readonly do: 'set-marks'; readonly marks: boolean }
  | { readonly do: 'set-file-names'; readonly pattern: string }
  /** Prints faces from other files or pages, or from their files as they are now. */
  | { readonly do: 'take-art'; readonly faces: readonly TakenArt[] }
  /** The job laid out from a changed brief, in place of the one before. */
  | { readonly do: 'change-brief'; readonly laid: Job };

/** The page that a face is printed from, and what was found on it. */
export interface TakenArt {
  readonly file: string;
  readonly page: number;
  readonly found: FoundArt;
}

/** What the edit is called where undo and redo are offered. */
export function nameOfEdit(command: Command): string {
  const pieces = (positions: readonly number[]) =>
    positions.length === 1 ? 'piece' : `${positions.length} pieces`;
  switch (command.do) {
    case 'move':
      return `Move ${pieces(command.positions)}`;
    case 'place':
      return 'Place piece';
    case 'turn-heads':
      return `Turn ${pieces(command.positions)}`;
    case 'swap-faces':
      return `Swap front and back of ${pieces(command.positions)}`;
    case 'duplicate':
      return `Duplicate ${pieces(command.positions)}`;
    case 'remove':
      return `Remove ${pieces(command.positions)}`;
    case 'align':
      return `Align ${pieces(command.positions)}`;
    case 'distribute':
      return `Distribute ${pieces(command.positions)}`;
    case 'repeat':
      return `Repeat ${pieces(command.positions)}`;
    case 'add':
      return `Add ${command.piece}`;
    case 'lay-out':
      return 'Lay out the sheet';
    case 'retitle':
      return 'Rename the job';
    case 'set-quantity':
      return `Change the quantity of ${command.piece}`;
    case 'set-overs':
      return 'Change the overs';
    case 'turn-art':
      return `Turn the ${command.face} art of ${command.piece}`;
    case 'set-reader-turn':
      return `Change how ${command.piece} is turned`;
    case 'set-work':
      return `Change to ${command.work.style}`;
    case 'take-plan':
      return `Plan for ${command.taken.plan.printer}`;
    case 'set-marks':
      return command.marks ? 'Print marks' : 'Leave out the marks';
    case 'set-file-names':
      return 'Change the file names';
    case 'take-art':
      return command.faces.length === 1
        ? `Take the art of ${command.faces[0]?.found.piece}`
        : `Take the art of ${command.faces.length} faces`;
    case 'change-brief':
      return 'Change the brief';
  }
}
