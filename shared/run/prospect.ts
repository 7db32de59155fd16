// Whether the quantities of a run can still be met, and how many sheets have yet to be printed and loaded for it.
import { oversFor, sheetsNeeded } from '../layout/count.ts';
import { sheetsOf } from './events.ts';
import type { PrintRun } from './run.ts';

/** How the quantities stand. Sheets unless it says pieces. */
interface Prospect {
  readonly designs: readonly DesignProspect[];
  /** Sheets that have yet still needed out of the last pass. */
  readonly toFinish: number;
  /** Of those, how many have not been through pass 1. */
  readonly toPrint: number;
  /** Loaded and neither finished nor spoiled. */
  readonly inHand: number;
  /** How many of those in hand may yet be spoiled; 0 where none may. */
  readonly spare: number;
  /** To be loaded beyond those in hand, were no more spoiled. */
  readonly toLoad: number;
  /** What is better loaded, with overs by the rule of the order. */
  readonly toLoadWithOvers: number;
}

/** One design, in pieces. */
interface DesignProspect {
  readonly piece: string;
  readonly wanted: number;
  /** Printed on finished sheets and not spoiled by the knife. */
  readonly there: number;
  /** Those there, and those that the sheets in hand would yield. */
  readonly canCome: number;
}

/** A design that lies on no sheet has no prospect: it is left out of the sheets and short for ever. */
export function prospectOf({ plan, sheets, pieces }: PrintRun): Prospect {
  const { blank, side1, turned, done } = sheets;
  const inHand = blank + side1 + turned;
  const designs = plan.designs.map(({ piece, wanted, perSheet }) => {
    const lost = pieces.find((p) => p.piece === piece)?.spoiled ?? 0;
    const there = done * perSheet - lost;
    return { piece, wanted, perSheet, there, canCome: there + inHand * perSheet };
  });
  const toFinish = Math.max(
    0,
    ...designs.filter((d) => d.perSheet > 0).map((d) => sheetsNeeded(d.wanted - d.there, d.perSheet)),
  );
  const toLoad = Math.max(0, toFinish - inHand);
  return {
    designs: designs.map(({ piece, wanted, there, canCome }) => ({ piece, wanted, there, canCome })),
    toFinish,
    toPrint: Math.max(0, toFinish - side1 - turned),
    inHand,
    spare: Math.max(0, inHand - toFinish),
    toLoad,
    toLoadWithOvers: toLoad === 0 ? 0 : toLoad + oversFor(toLoad, plan.overs),
  };
}

/** How the quantities stand, in one sentence, and whether something has to be done for them. */
export interface ProspectSaid {
  /** `just`: it can be met, but no more sheet may be spoiled. */
  readonly stands: 'to-load' | 'met' | 'can-be-met' | 'just' | 'short';
  readonly says: string;
}

export function sayProspect(run: PrintRun): ProspectSaid {
  const { toFinish, inHand, spare, toLoad, toLoadWithOvers, designs } = prospectOf(run);
  const nowhere = designs.filter((_, i) => run.plan.designs[i]?.perSheet === 0).map((d) => d.piece);
  if (nowhere.length > 0) {
    return {
      stands: 'short',
      says: `${nowhere.join(', ')} cannot be met: no sheet of this run holds any.`,
    };
  }
  if (toFinish === 0) {
    return { stands: 'met', says: `The quantity is met${inHand === 0 ? '' : `; ${left(inHand)} over`}.` };
  }
  if (run.sheets.loaded === 0) {
    const overs = toLoadWithOvers - toLoad;
    return {
      stands: 'to-load',
      says: `Load ${sheetsOf(toLoadWithOvers)}: ${toLoad} needed and ${overs} overs.`,
    };
  }
  if (toLoad > 0) {
    return {
      stands: 'short',
      says: `${toLoad} short: load ${sheetsOf(toLoadWithOvers)} more, ${toLoad} needed and ${toLoadWithOvers - toLoad} overs. ${sheetsOf(toFinish)} still needed.`,
    };
  }
  const may = spare === 0 ? 'none' : `${spare}`;
  return {
    stands: spare === 0 ? 'just' : 'can-be-met',
    says: `The quantity can still be met: ${sheetsOf(toFinish)} still needed, ${inHand} in hand; ${may} may be spoiled.`,
  };
}

const left = (count: number) => `${count} ${count === 1 ? 'is' : 'are'}`;
