// The cutting order in words: each step as one says it to the person at the guillotine.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Unit } from '../units/length.ts';
import { showLength } from '../units/show.ts';
import type { CutKind, CutOutcome, CutRegister, CutStep, CuttingOrder, QuarterTurns } from './order.ts';
import { sayList, sayMany } from './sayList.ts';
import { showOnScale } from './showOnScale.ts';

/** The whole order in a few sentences: the pile, the lifts, how many cuts and turns. */
export function sayOrder(order: CuttingOrder, unit: Unit): readonly string[] {
  const { cuts, strokes, turns, settings, lifts } = order;
  const count = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;
  const abreast = strokes < cuts ? `, ${strokes} where strips are cut side by side` : '';
  const said = [
    `${count(cuts, 'cut')}${abreast}; ${count(settings, 'setting')} of the back gauge; ${count(turns, 'turn')}.`,
  ];
  if (lifts === undefined) return said;
  const most = lifts.sheets[0] ?? 0;
  const least = lifts.sheets.at(-1) ?? 0;
  const each = most === least ? count(most, 'sheet') : `${most} or ${least} sheets`;
  const of = lifts.sheets.length === 1 ? `One lift of ${each}` : `${lifts.sheets.length} lifts of ${each}`;
  return [...said, `${of}, ${showLength(lifts.height, unit)} high at the most.`];
}

/** One step as a few sentences: the lie, the gauge, what falls and what is done. */
export function sayStep(order: CuttingOrder, step: CutStep, unit: Unit): string {
  const before = order.steps[step.number - 2];
  return [
    before === undefined ? sayFirstLie(step) : sayLie(before, step),
    `Back gauge ${showOnScale(step.distance, unit)}.`,
    ...sayCut(step),
    ...sayDone(order, step),
  ].join(' ');
}

function sayFirstLie({ gauge, side }: CutStep): string {
  return `Side 1 up, jog to the ${sayEdge(gauge)} and the ${sayEdge(side.edge)}: the ${sayEdge(gauge)} lies at the back gauge, the ${sayEdge(side.edge)} at the ${side.hand} side guide.`;
}

function sayLie(before: CutStep, { turned, gauge, side, parts }: CutStep): string {
  const names = parts.map((part) => part.stack);
  const isSame = sayList(names) === sayList(before.parts.map((part) => part.stack));
  const stacks = sayMany('stack', names);
  const [it, lies, was] =
    names.length === 1 ? ['it', 'it lies', 'it was'] : ['them', 'they lie', 'they were'];
  if (turned === 0) {
    return isSame
      ? `Leave ${stacks} as ${lies}.`
      : `Take ${stacks} and lay ${it} as ${was} cut${abreast(parts)}.`;
  }
  const turn = isSame ? `Turn ${stacks}` : `Take ${stacks} and turn ${it}`;
  return `${turn} ${sayTurn(turned)}${abreast(parts)}: the ${sayEdge(gauge)} comes to the back gauge, the ${sayEdge(side.edge)} to the ${side.hand} side guide.`;
}

function abreast(parts: readonly unknown[]): string {
  return parts.length === 1 ? '' : ', side by side or one after another';
}

/** The turn of a stack as hands make it. */
export function sayTurn(turned: QuarterTurns): string {
  switch (turned) {
    case 0:
      return 'not at all';
    case 1:
      return 'a quarter clockwise';
    case -1:
      return 'a quarter counter-clockwise';
    case 2:
      return 'half round';
  }
}

/** An edge of the stack, as the sheet's edge on that side is called. */
export function sayEdge(edge: SheetEdge): string {
  return edge === 'tail' ? 'tail' : `${edge} edge`;
}

/** What the cut does, in a few words. */
export function sayKind(kind: CutKind): string {
  switch (kind) {
    case 'margin':
      return 'The margin comes off.';
    case 'common':
      return 'One cut parts the neighbours.';
    case 'gutter':
      return 'First cut of the gutter.';
    case 'second':
      return 'Second cut of the gutter: what is left of it comes off.';
    case 'offcut':
      return 'An empty strip comes off.';
  }
}

function sayCut({ kind, parts }: CutStep): readonly string[] {
  const [first] = parts;
  const kept = parts.flatMap(({ inFront }) => (inFront.becomes === 'stack' ? [inFront.stack] : []));
  const isAside = first.inFront.becomes === 'stack' && first.behind.becomes === 'stack';
  return [
    sayKind(kind),
    ...(first.behind.becomes === 'waste'
      ? ['Waste lies under the clamp, what is wanted before the knife.']
      : []),
    ...(isAside ? [`Set what lies before the knife aside as ${sayMany('stack', kept)}.`] : []),
  ];
}

function sayDone(order: CuttingOrder, { parts }: CutStep): readonly string[] {
  const before = sayFinished(
    order,
    parts.map((part) => part.inFront),
  );
  const behind = sayFinished(
    order,
    parts.map((part) => part.behind),
  );
  const places = [
    ...(before === '' ? [] : [`${before} before the knife`]),
    ...(behind === '' ? [] : [`${behind} behind it`]),
  ];
  return places.length === 0 ? [] : [`Done: ${places.join(', ')}.`];
}

/** The finished positions among what a cut leaves, counted from 1, by their pieces where the sheet has several. */
function sayFinished({ arrangement }: CuttingOrder, outcomes: readonly CutOutcome[]): string {
  const done = outcomes
    .flatMap((outcome) => (outcome.becomes === 'piece' ? [outcome.position] : []))
    .toSorted((a, b) => a - b);
  const named = (position: number) => arrangement[position]?.piece;
  const pieces = [...new Set(done.map(named))];
  const isMixed = arrangement.some(({ piece }) => piece !== arrangement[0]?.piece);
  return pieces
    .map((piece) => {
      const numbers = done.filter((position) => named(position) === piece).map((position) => position + 1);
      return `${sayMany('position', numbers)}${isMixed ? ` ("${piece}")` : ''}`;
    })
    .join(', ');
}

/** How far an error in the size of the paper parts this cut from the image. */
export function sayRegister({ dimension, side1, side2 }: CutRegister): string {
  const sides = [
    ...(side1 === 0 ? [] : [`${SHARES[side1]} from side 1`]),
    ...(side2 === undefined || side2 === 0 ? [] : [`${SHARES[side2]} from side 2`]),
  ];
  if (sides.length === 0) {
    return `True to the image${side2 === undefined ? '' : ' of both sides'}, whatever the ${dimension} of the paper.`;
  }
  return `An error in the ${dimension} of the paper lies between this cut and the image: ${sides.join(', ')}.`;
}

const SHARES = { 0.5: 'half of it', 1: 'all of it' } as const;
