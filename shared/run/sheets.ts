// Where the sheets of a run are: blank, printed on one side, turned, printed, spoiled. No event makes or loses one.
import { ok, type Result, refuse } from '../fault/result.ts';
import { type Pass, type RunEvent, sheetsOf } from './events.ts';
import type { RunPlan } from './plan.ts';
import { refusedCount } from './refusedCount.ts';

/** Every sheet that was loaded is in just one of `blank`, `side1`, `turned`, `done` and `spoiled`. */
export interface SheetCounts {
  readonly loaded: number;
  readonly blank: number;
  /** Good out of pass 1, not turned yet. Always 0 where there is one pass. */
  readonly side1: number;
  /** Good out of pass 1, dry and turned for pass 2. Always 0 where there is one pass. */
  readonly turned: number;
  /** Good out of the last pass. */
  readonly done: number;
  readonly spoiled: readonly SpoiledSheets[];
  /** What the last proof sheet said. */
  readonly proof: 'none' | 'go' | 'no-go';
}

/** Sheets that were spoiled at one point of the run for one reason. */
interface SpoiledSheets {
  readonly at: Pass | 'proof';
  readonly reason: string;
  readonly sheets: number;
}

export const NO_SHEETS: SheetCounts = {
  loaded: 0,
  blank: 0,
  side1: 0,
  turned: 0,
  done: 0,
  spoiled: [],
  proof: 'none',
};

/** The events that move sheets. */
type SheetEvent = Extract<RunEvent, { kind: 'loaded' | 'proofed' | 'good' | 'spoiled' | 'turned' }>;

/** All sheets that were spoiled. */
export function countSpoiled(sheets: SheetCounts): number {
  return sheets.spoiled.reduce((sum, s) => sum + s.sheets, 0);
}

/** What was spoiled, where and why: `1 proof sheet (dark), 2 in pass 1 (fed askew)`; empty where nothing was. */
export function saySpoiled({ spoiled }: SheetCounts): string {
  return spoiled
    .map(({ at, reason, sheets }) => {
      const where = at === 'proof' ? (sheets === 1 ? 'proof sheet' : 'proof sheets') : `in pass ${at}`;
      return `${sheets} ${where} (${reason})`;
    })
    .join(', ');
}

/** The sheets after the event, or in a sentence why it cannot have happened. */
export function moveSheets(sheets: SheetCounts, event: SheetEvent, plan: RunPlan): Result<SheetCounts> {
  switch (event.kind) {
    case 'loaded':
      return ok({
        ...sheets,
        loaded: sheets.loaded + event.sheets,
        blank: sheets.blank + event.sheets,
      });
    case 'proofed':
      return proof(sheets, event);
    case 'good':
      return afterPass(sheets, event.pass, event.sheets, plan, (left) => {
        const goesOn = event.pass < plan.passes;
        return goesOn
          ? { ...left, side1: left.side1 + event.sheets }
          : { ...left, done: left.done + event.sheets };
      });
    case 'spoiled':
      return afterPass(sheets, event.pass, event.sheets, plan, (left) =>
        spoil(left, { at: event.pass, reason: event.reason, sheets: event.sheets }),
      );
    case 'turned':
      return turn(sheets, plan);
  }
}

function proof(sheets: SheetCounts, event: SheetEvent & { readonly kind: 'proofed' }): Result<SheetCounts> {
  if (sheets.blank === 0) {
    return refuse(refusedCount('There is no blank sheet left to prove on.', 'Load sheets first.'));
  }
  const taken = { ...sheets, blank: sheets.blank - 1 };
  return ok(
    event.go
      ? { ...taken, done: taken.done + 1, proof: 'go' }
      : { ...spoil(taken, { at: 'proof', reason: event.reason, sheets: 1 }), proof: 'no-go' },
  );
}

/** Takes the counted sheets from where they waited for the pass; `put` says where they are now. */
function afterPass(
  sheets: SheetCounts,
  pass: Pass,
  count: number,
  plan: RunPlan,
  put: (left: SheetCounts) => SheetCounts,
): Result<SheetCounts> {
  if (pass > plan.passes) {
    return refuse(
      refusedCount('This job goes through the printer once; there is no pass 2.', 'Count it in pass 1.'),
    );
  }
  if (sheets.proof !== 'go') {
    return refuse(
      refusedCount(
        sheets.proof === 'none'
          ? `No proof sheet has been looked at yet, so pass ${pass} cannot have begun.`
          : `The last proof sheet was no-go, so pass ${pass} cannot go on.`,
        'Print one sheet as all will be, look at it, and say go first.',
      ),
    );
  }
  const waiting = pass === 1 ? sheets.blank : sheets.turned;
  if (count > waiting) return refuse(tooMany(sheets, pass, count, waiting));
  return ok(put(pass === 1 ? { ...sheets, blank: waiting - count } : { ...sheets, turned: waiting - count }));
}

function tooMany(sheets: SheetCounts, pass: Pass, count: number, waiting: number) {
  if (pass === 1) {
    return refusedCount(
      `Pass 1 cannot have had ${sheetsOf(count)}: of the ${sheets.loaded} loaded, ${left(waiting)} blank.`,
      'Count again, or tell first that more sheets were loaded.',
    );
  }
  const unturned =
    sheets.side1 > 0
      ? ` ${sheetsOf(sheets.side1)} more came out of it but ${sheets.side1 === 1 ? 'was' : 'were'} not turned yet.`
      : '';
  return refusedCount(
    `Pass 2 cannot have had ${sheetsOf(count)}: of those that came good out of pass 1, ${left(waiting)} turned and waiting.${unturned}`,
    'Count again, or set the count of pass 1 right first.',
  );
}

const left = (count: number) => (count === 0 ? 'none is' : count === 1 ? '1 is' : `${count} are`);

function turn(sheets: SheetCounts, plan: RunPlan): Result<SheetCounts> {
  if (plan.passes === 1) {
    return refuse(
      refusedCount('This job goes through the printer once; nothing is turned.', 'Go on without.'),
    );
  }
  if (sheets.side1 === 0) {
    return refuse(
      refusedCount(
        'There is nothing to turn: no sheet has come good out of pass 1 since.',
        'Count pass 1 first.',
      ),
    );
  }
  return ok({ ...sheets, side1: 0, turned: sheets.turned + sheets.side1 });
}

/** Adds to what was spoiled at the same point for the same reason. */
function spoil(sheets: SheetCounts, more: SpoiledSheets): SheetCounts {
  const same = (s: SpoiledSheets) => s.at === more.at && s.reason === more.reason;
  const spoiled = sheets.spoiled.some(same)
    ? sheets.spoiled.map((s) => (same(s) ? { ...s, sheets: s.sheets + more.sheets } : s))
    : [...sheets.spoiled, more];
  return { ...sheets, spoiled };
}
