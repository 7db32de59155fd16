// The sheets of a paper as a feed takes them: as they are sold, cut from parent sheets, or cut from a roll.
import { same } from '../geometry/tolerance.ts';
import type { Feed, StockForm } from '../library/library.ts';
import { type Length, points } from '../units/length.ts';
import type { SheetSource } from './candidate.ts';
import { sheetsFromParent } from './cutFromParent.ts';
import { sheetsFromRoll } from './cutFromRoll.ts';
import { type CutFor, type FedSheet, type GrainIn, goesInto, grainIn } from './feeding.ts';

/** Every sheet that the feed takes of a form of paper, with each edge leading that may lead. */
export function fedSheets(form: StockForm, feed: Feed, wanted: CutFor): readonly FedSheet[] {
  switch (form.is) {
    case 'sheet':
      return bothLeads({ is: 'sheet', form }, form.size, grainIn(form), feed);
    case 'parent':
      return sheetsFromParent(form, feed, wanted).flatMap(({ source, size, grain }) =>
        bothLeads(source, size, grain, feed),
      );
    case 'roll':
      return sheetsFromRoll(form, feed, wanted);
  }
}

function bothLeads(
  source: SheetSource,
  size: readonly [Length, Length],
  grain: GrainIn,
  feed: Feed,
): readonly FedSheet[] {
  const [first, second] = size;
  const asTyped: FedSheet = { source, size, grain: grainFed(grain, 'second') };
  const turned: FedSheet = { source, size: [second, first], grain: grainFed(grain, 'first') };
  const leads = same(points(first), points(second)) ? [asTyped] : [asTyped, turned];
  return leads.filter((sheet) => goesInto(feed, sheet.size));
}

function grainFed(grain: GrainIn, along: 'first' | 'second'): FedSheet['grain'] {
  if (grain === 'mixed' || grain === 'unknown') return grain;
  return grain === along ? 'along-feed' : 'across-feed';
}
