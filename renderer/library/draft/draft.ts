// The draft of a library: what stands in the fields of its editor, as it was typed.
import type { SheetHold } from '../../../shared/geometry/register.ts';
import type { SheetEdge } from '../../../shared/geometry/sheet.ts';
import type { FittedInk } from '../../../shared/ink/inkModel.ts';
import type { Coated, Grain, PricedBy, StockForm } from '../../../shared/library/library.ts';
import type { Unit } from '../../../shared/units/length.ts';

/** Tells entries apart whatever they are called meanwhile; it is in no file. */
interface Keyed {
  readonly key: string;
}

export interface LibraryDraft {
  readonly units: Unit;
  readonly currency: string;
  readonly rates: DraftRates;
  readonly printers: readonly DraftPrinter[];
  readonly papers: readonly DraftPaper[];
}

export interface DraftPrinter extends Keyed {
  readonly name: string;
  readonly feeds: readonly DraftFeed[];
  readonly qualities: readonly DraftQuality[];
  readonly makeReady: { readonly minutes: string; readonly sheets: string };
  readonly wearPerSide: string;
  readonly ink: DraftInk;
}

export interface DraftFeed extends Keyed {
  readonly name: string;
  readonly least: string;
  readonly most: string;
  readonly thickest: string;
  readonly unprintable: Readonly<Record<SheetEdge, string>>;
  readonly hold: SheetHold;
  readonly turnsItself: boolean;
  readonly attended: boolean;
  readonly hand: { readonly load: string; readonly align: string; readonly turn: string };
}

export interface DraftQuality extends Keyed {
  readonly name: string;
  readonly secondsBase: string;
  readonly secondsPerSquareMetre: string;
}

export interface DraftInk {
  readonly pricePerMl: string;
  /** `spread` in a hundred. */
  readonly rule: { readonly base: string; readonly perCoverage: string; readonly spread: string };
  /** What the readings came to when they were last read; nobody types it. */
  readonly fitted: FittedInk | undefined;
  readonly readings: readonly DraftReading[];
}

export interface DraftReading extends Keyed {
  readonly date: string;
  readonly job: string;
  /** In m2. */
  readonly area: string;
  /** In a hundred of one ink. */
  readonly coverage: string;
  readonly ml: string;
}

export interface DraftPaper extends Keyed {
  readonly name: string;
  readonly weight: string;
  readonly caliper: string;
  readonly coated: Coated;
  readonly sidesAlike: boolean;
  readonly forms: readonly DraftForm[];
}

export interface DraftForm extends Keyed {
  readonly is: StockForm['is'];
  /** A width for a roll, a size for the others. */
  readonly size: string;
  readonly grain: Grain;
  readonly amount: string;
  readonly per: PricedBy;
  /** Sizes, or lengths of a roll, separated by semicolons; empty where none is named. */
  readonly cutTo: string;
}

interface DraftRates {
  readonly labourPerHour: string;
  readonly overs: readonly DraftOvers[];
  readonly secondsPerCut: string;
  readonly secondsPerPile: string;
  readonly tallestPile: string;
  readonly widest: string;
  readonly deepest: string;
  readonly opening: string;
  readonly leastGauge: string;
}

export interface DraftOvers extends Keyed {
  readonly from: string;
  readonly percent: string;
  readonly least: string;
}
