// What has to be known of a sheet before its cuts can be planned.
import type { SheetHold } from '../geometry/register.ts';
import type { Size } from '../geometry/space.ts';
import type { Work } from '../geometry/work.ts';
import type { Design } from '../layout/forms.ts';
import type { Position } from '../layout/position.ts';
import type { Unit } from '../units/length.ts';
import type { Cutter } from './cutter.ts';

/** The sheets to be cut, and the thickness of one in pt. Both more than 0. */
export interface PrintedPile {
  readonly sheets: number;
  readonly caliper: number;
}

/** What is to be cut, how it was printed, and on what it is cut. Lengths in pt. */
export interface CuttingInput {
  readonly sheet: Size;
  readonly arrangement: readonly Position[];
  readonly designs: readonly Design[];
  readonly work: Work;
  readonly hold: SheetHold;
  readonly cutter: Cutter;
  /** The sheets to be cut and their caliper, where they are known. */
  readonly run?: PrintedPile;
  /** The unit that refusals and notices speak in. */
  readonly unit: Unit;
}
