// What the person at the guillotine should know before the first cut.
import { paperError } from '../geometry/register.ts';
import { same, within } from '../geometry/tolerance.ts';
import { hasOneForm, turnOf } from '../geometry/work.ts';
import { CAUTIONS } from '../job/cautions.ts';
import { designNamed } from '../layout/forms.ts';
import { POINTS_PER } from '../units/length.ts';
import { showLength } from '../units/show.ts';
import type { CuttingInput } from './cuttingInput.ts';
import type { CutPart, CutStep, CuttingOrder } from './order.ts';
import { sayList, sayMany } from './sayList.ts';

/** A strip no wider than this tears or bends rather than being cut. @source common practice, no source */
const MIN_OFFCUT_PT = 3 * POINTS_PER.mm;

/** In words, what matters for the whole order first, then for single steps, then the cautions. */
export function noticesOf(order: Omit<CuttingOrder, 'notices'>, input: CuttingInput): readonly string[] {
  return [
    ...(order.fewest
      ? []
      : ['With so many pieces it is not proven that no other order has fewer cuts or turns.']),
    ...paperNotices(order, input),
    ...stepNotices(order.steps, input),
    ...pieceNotices(order, input),
    CAUTIONS.trim,
    CAUTIONS.lift,
  ];
}

function paperNotices({ knockUp }: Pick<CuttingOrder, 'knockUp'>, { work, hold }: CuttingInput): string[] {
  const notices = [
    `Before the first cut, check that the ${knockUp[0]} edge and the ${knockUp[1]} edge of the paper stand square to each other: what is held against raw paper is cut no truer than the paper is.`,
  ];
  for (const [lay, dimension, edge] of [
    [hold.along, 'length', knockUp[0]],
    [hold.across, 'width', knockUp[1]],
  ] as const) {
    if (lay !== 'centre') continue;
    notices.push(
      `The printer centres the sheet, so half of an error in its ${dimension} goes into the margin at the ${edge} edge, and all cuts that go back to that edge are off by it.`,
    );
  }
  if (hasOneForm(work)) {
    notices.push('Both sides carry the same form: make sure that side 1, which was printed first, is up.');
  }
  const turn = turnOf(work);
  const turned = turn && paperError(turn, hold);
  return turned?.betweenSides === 1 ? [...notices, turned.words] : notices;
}

function stepNotices(steps: readonly CutStep[], input: CuttingInput): string[] {
  const loose = steps.filter((step) => step.parts.some((part) => part.behind.becomes === 'waste'));
  const meeting = steps.filter(
    (step) => step.kind === 'common' && step.parts.some((part) => bleedsMeet(part, input)),
  );
  const slivers = steps.filter(
    (step) => wasteWidth(step) !== undefined && within(wasteWidth(step) ?? 0, MIN_OFFCUT_PT),
  );
  const say = (found: readonly CutStep[], what: (which: string) => string) =>
    found.length === 0
      ? []
      : [
          what(
            sayMany(
              'step',
              found.map((step) => step.number),
            ),
          ),
        ];
  return [
    ...say(
      loose,
      (which) =>
        `In ${which} waste lies under the clamp and what is wanted before the knife: hold it square.`,
    ),
    ...say(
      meeting,
      (which) =>
        `In ${which} one cut parts neighbours whose art runs up to it: where their colours differ, whatever the knife is off shows.`,
    ),
    ...say(
      slivers,
      (which) =>
        `In ${which} no more than ${showLength(MIN_OFFCUT_PT, input.unit)} comes off: cut low piles with a sharp knife, or the strip tears.`,
    ),
  ];
}

/** How wide the strip is that falls away, in pt. */
function wasteWidth({ gauge, parts: [first] }: CutStep): number | undefined {
  const waste = [first.behind, first.inFront].find((outcome) => outcome.becomes === 'waste');
  return gauge === 'left' || gauge === 'right' ? waste?.area.w : waste?.area.h;
}

/** Whether a piece with bleed ends at the cut. */
function bleedsMeet({ line: [from, to], area }: CutPart, { arrangement, designs }: CuttingInput): boolean {
  return arrangement.some(({ trim, piece }) => {
    if (designNamed(designs, piece).bleed === 0) return false;
    return same(from.x, to.x)
      ? isBeside(trim.x, trim.w, from.x) && overlaps(trim.y, trim.h, area.y, area.h)
      : isBeside(trim.y, trim.h, from.y) && overlaps(trim.x, trim.w, area.x, area.w);
  });
}

function isBeside(start: number, length: number, line: number): boolean {
  return same(start, line) || same(start + length, line);
}

function overlaps(start: number, length: number, otherStart: number, otherLength: number): boolean {
  return start < otherStart + otherLength && otherStart < start + length;
}

function pieceNotices({ sheet }: Pick<CuttingOrder, 'sheet'>, { arrangement }: CuttingInput): string[] {
  const numbered = arrangement.map((position, i) => ({ ...position, number: i + 1 }));
  const uncut = numbered.filter(
    ({ trim }) =>
      same(trim.x, 0) || same(trim.y, 0) || same(trim.x + trim.w, sheet.w) || same(trim.y + trim.h, sheet.h),
  );
  const backs = numbered.filter(({ face }) => face === 'back');
  const isMixed = backs.length > 0 && backs.length < numbered.length;
  return [
    ...(uncut.length === 0
      ? []
      : [
          `The paper's own edge is an edge of ${sayMany(
            'position',
            uncut.map((p) => p.number),
          )}: nothing is cut there.`,
        ]),
    ...(isMixed
      ? [
          `Position${backs.length === 1 ? ' ' : 's '}${sayList(backs.map((p) => p.number))} ${backs.length === 1 ? 'comes' : 'come'} off with the back up: turn ${backs.length === 1 ? 'it' : 'them'} over before all go on one pile.`,
        ]
      : []),
  ];
}
