// `gang`: a gang run, several designs of one size on the same forms, so that sheets and forms cost least.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type GangProposal, gangOrderOf, proposeGang } from '../../shared/gang/gangJob.ts';
import { showNumber, showPercent } from '../../shared/units/show.ts';
import { readBriefFile } from '../disk/briefFiles.ts';
import { planGang } from '../gang/gangTask.ts';
import { answer, answerFault, progress } from './answer.ts';

export interface GangOptions {
  readonly formCost: string;
  readonly sheetCost: string;
  readonly mostForms?: string;
  readonly seconds: string;
  readonly json: boolean;
}

export async function gang(briefPath: string, options: GangOptions): Promise<void> {
  const { json } = options;
  const brief = await readBriefFile(briefPath);
  if (!brief.ok) return answerFault(json, brief.fault);
  const asked = readOptions(options);
  if (!asked.ok) return answerFault(json, asked.fault);
  const { seconds, ...costs } = asked.value;
  const order = gangOrderOf(brief.value, costs);
  if (!order.ok) return answerFault(json, order.fault);

  const planned = await planGang(
    { order: order.value, seconds },
    {
      onBetter: ({ plan, gap }) =>
        progress(
          `${plan.forms.length} forms, ${plan.sheets} sheets, cost ${money(plan.cost)}, ${sayGap(gap)}`,
        ),
    },
  );
  if (!planned.ok) return answerFault(json, planned.fault);
  const proposal = proposeGang(brief.value, order.value, planned.value);
  answer(json, proposal, sayProposal(brief.value.title, proposal));
}

interface Asked {
  readonly sheetCost: number;
  readonly formCost: number;
  readonly mostForms: number | undefined;
  readonly seconds: number;
}

function readOptions({ sheetCost, formCost, mostForms, seconds }: GangOptions): Result<Asked> {
  const sheet = numberFrom(sheetCost, (n) => n >= 0);
  if (sheet === undefined) return refuse(notA('cost', sheetCost, '--sheet-cost'));
  const form = numberFrom(formCost, (n) => n >= 0);
  if (form === undefined) return refuse(notA('cost', formCost, '--form-cost'));
  const most =
    mostForms === undefined ? undefined : numberFrom(mostForms, (n) => Number.isInteger(n) && n > 0);
  if (mostForms !== undefined && most === undefined) {
    return refuse(notA('number of forms', mostForms, '--most-forms'));
  }
  const time = numberFrom(seconds, (n) => n > 0);
  if (time === undefined) return refuse(notA('number of seconds', seconds, '--seconds'));
  return ok({ sheetCost: sheet, formCost: form, mostForms: most, seconds: time });
}

function numberFrom(written: string, fits: (value: number) => boolean): number | undefined {
  const value = Number(written);
  return written.trim() !== '' && Number.isFinite(value) && fits(value) ? value : undefined;
}

function notA(what: string, written: string, where: string): Fault {
  return {
    code: 'gang-impossible',
    message: `"${written}" is no ${what}.`,
    remedy: `Give ${where} as a plain number, such as 12 or 0.35.`,
    where,
  };
}

const money = (amount: number) => showNumber(amount, 2);

function sayGap(gap: number): string {
  return gap === 0 ? 'proven the least' : `at most ${showPercent(gap, 2)} above the least`;
}

function sayProposal(title: string, proposal: GangProposal): readonly string[] {
  const { forms, pieces, sheets, cost, leftOverCost, gap } = proposal;
  return [
    `${title}: ${forms.length} ${forms.length === 1 ? 'form' : 'forms'}, ${sheets} good sheets, cost ${money(cost)}, ${sayGap(gap)}.`,
    ...forms.map((form, f) => {
      const up = form.pieces.map((one) => `${one.piece} ${one.up} up`).join(', ');
      const spare = form.spare === 0 ? '' : `, room for ${form.spare} more`;
      return `Form ${f + 1}: ${form.sheets} sheets of ${up}${spare}.`;
    }),
    ...pieces.map(
      ({ piece, wanted, printed, leftOver }) =>
        `${piece}: ${printed} for the ${wanted} wanted, ${leftOver} left over.`,
    ),
    `What is left over takes ${money(leftOverCost)} of the cost of the sheets. Overs for setting up and spoilage come on top.`,
  ];
}
