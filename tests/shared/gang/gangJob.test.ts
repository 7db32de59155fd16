// A brief as a gang run: its order, its plan in its own words, and a brief for each form.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weighGang } from '../../../shared/gang/gang.ts';
import { briefsOfGang, gangOrderOf, proposeGang } from '../../../shared/gang/gangJob.ts';
import { settleForms } from '../../../shared/gang/settleForms.ts';
import { startGang } from '../../../shared/gang/startGang.ts';
import type { Brief } from '../../../shared/job/brief.ts';
import { countJob } from '../../../shared/job/counts.ts';
import { JOB_SCHEMA } from '../../../shared/job/job.ts';
import { layOutBrief } from '../../../shared/job/layOutJob.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { supperWith } from '../../kit/briefs.ts';
import { drawnCases } from '../../kit/drawnCases.ts';

/** Cards of one size in these numbers, on a sheet that holds so many of them. */
function cards(quantities: readonly number[], changes: object = {}, onPiece: object = {}): Brief {
  const written = supperWith(changes, onPiece);
  const [piece] = written.pieces;
  const read = readBrief({
    ...written,
    pieces: quantities.map((quantity, i) => ({ ...piece, name: `Card ${i + 1}`, quantity })),
  });
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

const BACK_TO_BACK = { work: 'work-and-back', turn: 'side-to-side' };
const COSTS = { sheetCost: 0.5, formCost: 20 };

function proposed(brief: Brief) {
  const order = gangOrderOf(brief, COSTS);
  if (!order.ok) throw new Error(order.fault.message);
  const begun = startGang(order.value);
  if (begun === undefined) throw new Error('There are too few places');
  const plan = weighGang(order.value, settleForms(order.value, begun.forms));
  return { order: order.value, proposal: proposeGang(brief, order.value, { plan, bound: 1, gap: 0.5 }) };
}

describe('A brief as a gang run', () => {
  it('has as many places as its sheet holds pieces; in a one-form style two pieces share one', () => {
    const two = cards([100, 301], BACK_TO_BACK);
    const apart = gangOrderOf(two, COSTS);
    expect(apart).toMatchObject({ ok: true, value: { ...COSTS, quantities: [100, 301] } });
    const alone = layOutBrief({ ...two, pieces: two.pieces.slice(0, 1) });
    const up = alone.ok ? alone.value.positions.length : 0;
    expect(apart.ok && apart.value.slots).toBe(up);
    const together = gangOrderOf(cards([100, 301], { work: 'work-and-turn' }), COSTS);
    expect(together).toMatchObject({ ok: true, value: { quantities: [50, 151], slots: up / 2 } });
  });

  it('is proposed with the copies of every form, what is printed and what is left over', () => {
    const brief = cards([100, 100, 400], BACK_TO_BACK);
    const { order, proposal } = proposed(brief);
    const printed = (name: string) =>
      proposal.forms
        .flatMap((form) => form.pieces.map((one) => ({ ...one, made: one.up * form.sheets })))
        .filter((one) => one.piece === name)
        .reduce((all, one) => all + one.made, 0);
    for (const { piece, wanted, printed: said, leftOver } of proposal.pieces) {
      expect(said).toBe(printed(piece));
      expect(leftOver).toBe(said - wanted);
      expect(leftOver).toBeGreaterThanOrEqual(0);
    }
    for (const form of proposal.forms) {
      expect(form.pieces.reduce((all, one) => all + one.up, 0) + form.spare).toBe(order.slots);
    }
    const left = proposal.pieces.reduce((all, one) => all + one.leftOver, 0);
    expect(proposal.leftOverCost).toBeCloseTo((0.5 / order.slots) * left, 12);
    expect(proposal.sheets).toBe(proposal.forms.reduce((all, form) => all + form.sheets, 0));
    expect(proposal).toMatchObject({ bound: 1, gap: 0.5 });
  });

  it('becomes briefs that are laid out with just the copies and the sheets of their forms', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 2, maxLength: 6 }),
        fc.constantFrom(BACK_TO_BACK, { work: 'work-and-turn' }, { work: 'simplex' }),
        fc.constantFrom('5 x 7 in', '3.5 x 2 in', '4 x 6 in'),
        (quantities, work, trim) => {
          const brief = cards(quantities, work, { trim });
          const { proposal } = proposed(brief);
          briefsOfGang(brief, proposal).forEach((one, f) => {
            const laid = layOutBrief(one);
            if (!laid.ok) throw new Error(laid.fault.message);
            const form = proposal.forms[f]!;
            const count = countJob({
              schema: JOB_SCHEMA,
              brief: one,
              art: [],
              arrangement: laid.value.positions,
            });
            expect(count.needed).toBe(form.sheets);
            expect(
              count.yields.map((y) => ({ piece: y.piece, up: y.perSheet, printed: y.fromNeeded })),
            ).toEqual(form.pieces);
          });
        },
      ),
      drawnCases(40),
    );
  });

  it('names its forms, unless there is one only', () => {
    const brief = cards([10, 2000], BACK_TO_BACK);
    const form = (piece: string) => ({ sheets: 5, spare: 0, pieces: [{ piece, up: 2, printed: 10 }] });
    const two = briefsOfGang(brief, { forms: [form('Card 1'), form('Card 2')] });
    expect(two.map((one) => one.title)).toEqual([
      `${brief.title}, form 1 of 2`,
      `${brief.title}, form 2 of 2`,
    ]);
    expect(two[1]?.pieces.map((p) => [p.name, p.quantity])).toEqual([['Card 2', 10]]);
    expect(briefsOfGang(brief, { forms: [form('Card 1')] })[0]?.title).toBe(brief.title);
  });

  it('is refused with one piece, and with pieces of unlike size', () => {
    const one = gangOrderOf(cards([100]), COSTS);
    expect(one.ok || one.fault.message).toBe('A gang run needs several pieces; the brief has one.');
    const two = cards([100, 100], BACK_TO_BACK);
    const [first, second] = two.pieces;
    const unlike = gangOrderOf({ ...two, pieces: [first!, { ...second!, lies: 'upright' }] }, COSTS);
    expect(unlike.ok || unlike.fault).toMatchObject({
      code: 'gang-impossible',
      message:
        'Pieces that share forms in a gang run must be alike: "Card 1" is 5 × 7 in with 0.125 in bleed and may lie either way, "Card 2" is 5 × 7 in with 0.125 in bleed and may lie upright.',
    });
  });
});
