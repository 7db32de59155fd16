// The library: the printers and papers of a studio and what its time costs, as a person wrote them.
import type { SheetHold } from '../geometry/register.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { InkReading as Read } from '../ink/fitInk.ts';
import type { InkModel, RuleOfThumb } from '../ink/inkModel.ts';
import type { Overs } from '../layout/count.ts';
import type { Length, Unit } from '../units/length.ts';
import type { Caliper } from './caliper.ts';
import type { PaperWeight } from './paperWeight.ts';

/** The version of the library file that this program writes. */
export const LIBRARY_SCHEMA = 1;

/** Everything that a plan reckons with. Names of printers are unlike one another, those of papers too. */
export interface Library {
  readonly schema: typeof LIBRARY_SCHEMA;
  /** The unit of lengths typed without one. */
  readonly units: Unit;
  /** What stands before amounts of money: a symbol or a code. All amounts are in this currency. */
  readonly currency: string;
  readonly rates: Rates;
  readonly printers: readonly Printer[];
  readonly papers: readonly Paper[];
}

export interface Printer {
  readonly name: string;
  /** Ways in which sheets get into it, at least one. */
  readonly feeds: readonly [Feed, ...Feed[]];
  /** What it can print in, the usual one first. */
  readonly qualities: readonly [Quality, ...Quality[]];
  /** Setting up, once for every form that is set up by itself. */
  readonly makeReady: {
    readonly minutes: number;
    /** Sheets spoiled with it; they go through every pass. */
    readonly sheets: number;
  };
  readonly ink: {
    readonly pricePerMl: number;
    /** What is reckoned with: fitted where there are readings enough, else a rule of thumb. */
    readonly model: InkModel;
    /** The rule of thumb that a fitted model stands in for; it counts again when too few readings are left. */
    readonly rule?: RuleOfThumb | undefined;
    readonly readings: readonly CounterReading[];
  };
  /** For every side of a sheet that is printed: wear, service, or what a meter counts. */
  readonly wearPerSide: number;
}

/** What the printer's own counter said of a finished job. */
export interface CounterReading extends Read {
  /** `2026-03-01` */
  readonly date: string;
  readonly job: string;
}

/** A tray, a slot or a guide by which sheets are fed. */
export interface Feed {
  readonly name: string;
  /** The smallest and the largest sheet it takes, each across the feed and along it. */
  readonly least: readonly [Length, Length];
  readonly most: readonly [Length, Length];
  /** The thickest paper it takes; none where that is not known. */
  readonly thickest?: Caliper | undefined;
  readonly unprintable: Readonly<Record<SheetEdge, Length>>;
  readonly hold: SheetHold;
  /** Whether the printer turns the sheet itself and prints both sides. */
  readonly turnsItself: boolean;
  /** Whether somebody has to stand there as long as it prints. */
  readonly attended: boolean;
  /** What a person does with each sheet, in seconds; 0 where a tray does it. */
  readonly hand: {
    /** Laying it in, in every pass. */
    readonly load: number;
    /** Laying it straight, in every pass. */
    readonly align: number;
    /** Turning it between the passes. */
    readonly turn: number;
  };
}

/** How long a sheet takes in one pass: `secondsBase + secondsPerSquareMetre x area of the sheet`. */
export interface Quality {
  readonly name: string;
  readonly secondsBase: number;
  readonly secondsPerSquareMetre: number;
}

export interface Paper {
  readonly name: string;
  readonly weight: PaperWeight;
  readonly caliper: Caliper;
  readonly coated: Coated;
  /** Whether its two sides are alike, which one form for both passes needs. */
  readonly sidesAlike: boolean;
  /** What it can be bought as, at least one. */
  readonly forms: readonly [StockForm, ...StockForm[]];
}

export type Coated = 'none' | 'one-side' | 'both-sides';

/** A sheet as it is printed, a parent sheet to be cut down first, or a roll. */
export type StockForm = StockSheet | ParentSheet | Roll;

/** Along which edge the grain runs. */
export type Grain = 'long' | 'short' | 'unknown';

export interface StockSheet {
  readonly is: 'sheet';
  readonly size: readonly [Length, Length];
  readonly grain: Grain;
  readonly price: Price;
}

/** Cut down to the sizes named, or to equal parts of it where none is. */
export interface ParentSheet {
  readonly is: 'parent';
  readonly size: readonly [Length, Length];
  readonly grain: Grain;
  readonly price: Price;
  readonly cutTo: readonly (readonly [Length, Length])[];
}

/** Cut to the lengths named, or to those that the pieces need where none is. Its grain runs along it. */
export interface Roll {
  readonly is: 'roll';
  readonly width: Length;
  readonly price: Price;
  readonly cutTo: readonly Length[];
}

/** A ream is 500 sheets. */
export interface Price {
  readonly amount: number;
  readonly per: PricedBy;
}

export type PricedBy = 'sheet' | 'ream' | 'kg' | 'metre';

/** What time costs, and what is reckoned with beside the printing itself. */
export interface Rates {
  readonly labourPerHour: number;
  /** By good sheets that are needed: the last entry that does not begin above them counts. None: the brief's own overs. */
  readonly overs: readonly OversFrom[];
  readonly cutting: {
    /** Setting the gauge and cutting once through a pile. */
    readonly secondsPerCut: number;
    /** Knocking a pile up and laying it in, for every pile. */
    readonly secondsPerPile: number;
    readonly tallestPile: Length;
    /** What the cutter takes: along the knife, behind it, and under the clamp. */
    readonly widest: Length;
    readonly deepest: Length;
    readonly opening: Length;
    /** How near its back gauge comes to the knife. */
    readonly leastGauge: Length;
  };
}

export interface OversFrom extends Overs {
  /** Good sheets, from 0. */
  readonly from: number;
}
