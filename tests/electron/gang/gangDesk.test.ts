// Gang runs asked for by the window: planned in a thread, stopped when enough was seen.
import { describe, expect, it } from 'vitest';
import { GangDesk } from '../../../electron/gang/gangDesk.ts';
import { planGang } from '../../../electron/gang/gangTask.ts';
import type { Brief } from '../../../shared/job/brief.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { supperWith } from '../../kit/briefs.ts';
import { publishedGang } from '../../kit/gangOrders.ts';
import { granted } from '../../kit/granted.ts';

function cards(...quantities: readonly number[]): Brief {
  const written = supperWith({ work: 'work-and-back', turn: 'side-to-side' });
  const [piece] = written.pieces;
  const pieces = quantities.map((quantity, i) => ({ ...piece, name: `Card ${i + 1}`, quantity }));
  return granted(readBrief({ ...written, pieces }));
}

describe('A gang run for the window', () => {
  it('is proposed in words of the brief, with what is known of how good it is', async () => {
    // Four places: 4500, 9000 and 16000 cards are the published order I001, whose best is two forms.
    const { order, best } = publishedGang('I001');
    const { sheetCost, formCost } = order;
    const brief = cards(4500, 9000, 16000);
    const proposal = granted(await new GangDesk().solve({ brief, sheetCost, formCost, seconds: 20 }));
    expect(proposal.cost).toBeCloseTo(best, 6);
    expect(proposal.gap).toBe(0);
    expect(proposal.forms.map((form) => form.sheets)).toEqual([4500, 2875]);
    expect(proposal.forms[1]?.pieces).toEqual([{ piece: 'Card 3', up: 4, printed: 11500 }]);
    expect(proposal.pieces.map((piece) => piece.leftOver)).toEqual([0, 0, 0]);
  });

  it('that is stopped answers with the best plan so far', async () => {
    const { order, best } = publishedGang('I014');
    const told: number[] = [];
    const enough = new AbortController();
    const planned = await planGang(
      { order, seconds: 300 },
      {
        signal: enough.signal,
        onBetter: (better) => {
          told.push(better.plan.cost);
          if (told.length === 2) enough.abort();
        },
      },
    );
    const answer = granted(planned);
    expect(answer.plan.cost).toBe(told.at(-1));
    expect(answer.plan.cost).toBeLessThan(1.05 * best);
    expect(answer.gap).toBeGreaterThan(0);
  });

  it('that is asked for anew ends the one under way', async () => {
    const desk = new GangDesk();
    const costs = { sheetCost: 1, formCost: 1, seconds: 20 };
    const first = desk.solve({ ...costs, brief: cards(4500, 9000, 16000) });
    const second = desk.solve({ ...costs, brief: cards(10, 20) });
    expect((await first).ok).toBe(false);
    expect((await second).ok).toBe(true);
  });

  it('is refused for one piece alone', async () => {
    const refused = await new GangDesk().solve({ brief: cards(5), sheetCost: 1, formCost: 1, seconds: 1 });
    expect(refused.ok || refused.fault.code).toBe('gang-impossible');
  });
});
