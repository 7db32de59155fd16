import { describe, expect, it } from 'vitest';
import { JOB_SCHEMA, type Job } from '../../../shared/job/job.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { standAtBench } from '../../kit/bench.ts';
import { supperWith } from '../../kit/briefs.ts';

// 5 x 7 in cards on 11 x 17 in: 792 x 1224 pt, the cards 360 x 504, bleed 9, gutter 18, 9 unprintable at the sides.
function jobOf(changes: object, arrangement: readonly Position[]): Job {
  const brief = readBrief(supperWith(changes));
  if (!brief.ok) throw new Error(brief.fault.message);
  return { schema: JOB_SCHEMA, brief: brief.value, art: [], arrangement };
}
const lay = (x: number, y: number, face: 'front' | 'back' = 'front'): Position => ({
  piece: 'Supper',
  face,
  head: 0,
  trim: { x, y, w: 360, h: 504 },
});
const workAndTurn = () =>
  standAtBench(jobOf({}, [lay(27, 621), lay(405, 621, 'back'), lay(27, 99), lay(405, 99, 'back')]));
const twoForms = (...arrangement: Position[]) =>
  standAtBench(jobOf({ work: 'work-and-back', turn: 'side-to-side' }, arrangement));

describe('dragging a piece', () => {
  it('draws it to equal side margins, its partner following on the other side', () => {
    const bench = workAndTurn();
    const hand = bench.grab('Supper').by(-40, 60).by(44, -40);
    bench.expectGuide('equal side margins').expectAt(1, 27, 641).expectAt(2, 405, 641);
    hand.drop();
    bench.expectUndo('Move piece').expectNoGuides().expectChosen(1).expectAt(3, 27, 99);
  });

  it('draws it to a gutter above its neighbour, and in line with it', () => {
    const bench = workAndTurn();
    bench.grab('Supper').by(0, 30).by(3, -27);
    bench
      .expectGuide('gutter of 0.25 in to position 3')
      .expectGuide('in line with position 3')
      .expectAt(1, 27, 621);
  });

  it('goes freely while the key is held', () => {
    const bench = workAndTurn();
    bench.grab('Supper').by(3, 4, { free: true }).by(1, 1, { free: true }).drop();
    bench.expectAt(1, 31, 626).expectAt(2, 401, 626);
  });

  it('tells where it lies while it is dragged', () => {
    const bench = workAndTurn();
    bench.grab('Supper', 4).by(9, 9, { free: true });
    expect(bench.scene().gesture).toMatchObject({ says: '5.75 in from the left, 1.5 in from the tail' });
  });

  it('begins only when the hand has really moved', () => {
    const bench = workAndTurn();
    bench.grab('Supper').by(1, 1).drop();
    bench.expectUndo(undefined).expectChosen(1).expectAt(1, 27, 621);
  });

  it('shows what would be wrong while it lasts, and is taken back by Escape', () => {
    const bench = workAndTurn().expectFaults();
    const hand = bench.grab('Supper').by(60, -80);
    bench.expectFaults('overlap');
    hand.cancel();
    bench.expectFaults().expectUndo(undefined).expectAt(1, 27, 621);
  });

  it('stops at the edge of the sheet', () => {
    const bench = twoForms(lay(27, 99));
    bench.grab('Supper').by(-300, 5, { free: true }).drop();
    bench.expectAt(1, 0, 104);
  });

  it('is one edit however far it went, and undo takes it back', () => {
    const bench = workAndTurn();
    bench.grab('Supper').by(-9, 20).by(-3, 30).by(5, 5).drop();
    expect(bench.app.getState().history?.past).toHaveLength(1);
    bench.app.getState().undo();
    bench.expectAt(1, 27, 621).expectAt(2, 405, 621);
  });

  it('that comes back to where it began is no edit', () => {
    const bench = twoForms(lay(27, 99));
    bench.grab('Supper').by(50, 50, { free: true }).by(-50, -50, { free: true }).drop();
    bench.expectUndo(undefined);
    expect(bench.app.getState().previewed).toBeUndefined();
  });

  it('carries all that is chosen, and of a piece and its partner the one on the grabbed half leads', () => {
    const bench = workAndTurn().choose(1, 2, 3, 4);
    bench.grab('Supper', 4).by(3, 7, { free: true }).drop();
    bench.expectAt(4, 408, 106).expectAt(3, 24, 106).expectAt(2, 408, 628).expectAt(1, 24, 628);
  });

  it('on side 2 moves what lies there the way the hand goes', () => {
    const bench = twoForms(lay(27, 99)).turnOver();
    expect(bench.scene().pieces[0]?.trim.x).toBe(405);
    bench.grab('Supper').by(-30, 10, { free: true });
    expect(bench.scene().pieces[0]?.trim.x).toBeCloseTo(375, 9);
    bench.expectAt(1, 57, 109);
  });

  it('on side 2 shows its guides where they lie on side 2', () => {
    const bench = twoForms(lay(27, 99), lay(405, 700)).turnOver();
    bench.grab('Supper', 1).by(-40, 30).by(41, -3);
    bench.expectGuide('mirror of position 2');
    const margins = bench.guides().find((g) => g.name === 'equal side margins');
    expect(margins?.lines.map((l) => Math.round(l)).sort((a, b) => a - b)).toEqual([27, 765]);
  });
});

describe('choosing', () => {
  it('by a press chooses the piece, and with Shift one more or one less', () => {
    const bench = workAndTurn();
    bench.grab('Supper', 1).drop();
    bench.expectChosen(1);
    bench.grab('Supper', 3, { adding: true }).drop();
    bench.expectChosen(1, 3);
    bench.grab('Supper', 1, { adding: true }).drop();
    bench.expectChosen(3);
  });

  it('by a click on one of several leaves only that one, while a drag takes them all along', () => {
    const bench = twoForms(lay(27, 621), lay(405, 621), lay(27, 99));
    bench.choose(1, 3).grab('Supper').drop();
    bench.expectChosen(1).expectUndo(undefined);
    bench.choose(1, 3).grab('Supper').by(8, -16, { free: true }).drop();
    bench.expectChosen(1, 3).expectAt(1, 35, 605).expectAt(3, 35, 83);
  });

  it.each(['shiftKey', 'ctrlKey', 'metaKey'] as const)(
    'with %s adds a piece, and takes it away again',
    (key) => {
      const bench = twoForms(lay(27, 621), lay(405, 621));
      const click = (x: number, y: number, keys: object) => bench.click(x, y, keys);
      click(200, 800, {});
      bench.expectChosen(1);
      click(600, 800, { [key]: true });
      bench.expectChosen(1, 2);
      click(200, 800, { [key]: true });
      bench.expectChosen(2);
    },
  );

  it('by a frame takes all that it touches', () => {
    const bench = workAndTurn();
    bench.press(-20, 1100).by(100, -100).drop();
    bench.expectChosen(1);
    bench.press(-20, 1100).by(100, -700).drop();
    bench.expectChosen(1, 3);
    bench.press(800, 90, { adding: true }).by(-20, 20).drop();
    bench.expectChosen(1, 3);
    bench.press(800, 90, { adding: true }).by(-100, 20).drop();
    bench.expectChosen(1, 3, 4);
  });

  it('by a press on the table chooses none, unless it is taken back', () => {
    const bench = workAndTurn().choose(2);
    bench.press(-20, 30).cancel();
    bench.expectChosen(2);
    bench.press(-20, 30).drop();
    bench.expectChosen();
  });
});

describe('nudging', () => {
  it('carries what is chosen by a hundredth of an inch, or by a tenth with Shift', () => {
    const bench = workAndTurn().choose(1);
    bench.pressKey('ArrowRight').expectAt(1, 27.72, 621).expectAt(2, 404.28, 621);
    bench.pressKey('ArrowUp', { shift: true }).expectAt(1, 27.72, 628.2);
    bench.pressKey('ArrowLeft').pressKey('ArrowDown', { shift: true }).expectAt(1, 27, 621);
  });

  it('on side 2 goes the way the arrow points', () => {
    const bench = twoForms(lay(27, 99)).turnOver().choose(1);
    bench.pressKey('ArrowRight');
    expect(bench.scene().pieces[0]?.trim.x).toBeCloseTo(405.72, 9);
  });

  it('does nothing where nothing is chosen or the key is no arrow', () => {
    workAndTurn().pressKey('ArrowRight').choose(1).pressKey('a').expectUndo(undefined);
  });
});
