// The chosen candidate: its sheet, all parts of its cost and its time, and the way to the bench.
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { COST_PARTS } from '../../../shared/plan/costParts.ts';
import { showMoney, showNumber, showPercent, showTime } from '../../../shared/units/show.ts';
import { Button } from '../../controls/Button.tsx';
import { Note } from '../../controls/Note.tsx';
import { nameWork } from '../nameWork.ts';
import { CostSwatch } from './CostBar.tsx';
import { boughtInWords, paperOf, sheetsInWords } from './inWords.ts';
import { SheetPicture } from './SheetPicture.tsx';

interface Props {
  readonly candidate: PlanCandidate;
  readonly currency: string;
  /** Whether the sheet on the bench is this one already. */
  readonly taken: boolean;
  readonly take: () => void;
}

export function ChosenCandidate({ candidate: c, currency, taken, take }: Props) {
  const money = (amount: number) => showMoney(amount, currency);
  return (
    <section className="read-panel plan-panel chosen-candidate" aria-label="Chosen plan">
      <SheetPicture candidate={c} />
      <div className="chosen-words">
        <h3>
          {c.printer.name}, {c.feed.name}
        </h3>
        <p>
          {paperOf(c)}. {nameWork(c.work)}, {c.up} up.
        </p>
        <dl className="facts">
          <Fact name="Sheets to print" says={sheetsInWords(c.count)} />
          <Fact name="To buy" says={boughtInWords(c)} />
          <Fact name="Forms and passes" says={formsInWords(c)} />
          <Fact
            name="Time"
            says={`${showTime(c.time.total)}, of which ${showTime(c.time.attended)} with you there`}
          />
          <Fact name="Ink" says={inkInWords(c)} />
          <Fact name="Waste" says={wasteInWords(c)} />
        </dl>
        {taken ? (
          <Note tone="good">The sheet on the bench is laid out for this.</Note>
        ) : (
          <Button kind="main" onPress={take}>
            Use this plan
          </Button>
        )}
        {c.notices.map((notice) => (
          <Note key={notice} tone="know">
            {notice}
          </Note>
        ))}
      </div>
      <table className="cost-table">
        <tbody>
          {COST_PARTS.map(({ part, name }) => (
            <tr key={part}>
              <th scope="row">
                <CostSwatch part={part} /> {name}
              </th>
              <td className="amount">{money(c.cost[part])}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Total</th>
            <td className="amount">{money(c.cost.total)}</td>
          </tr>
          <tr>
            <th scope="row">For each piece</th>
            <td className="amount">{money(c.perPiece)}</td>
          </tr>
          <tr>
            <td colSpan={2} className="soft sure">
              Between {money(c.spread.low)} and {money(c.spread.high)}, by how sure the ink is.
            </td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function Fact({ name, says }: { readonly name: string; readonly says: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{says}</dd>
    </>
  );
}

function formsInWords({ setUps, passes }: PlanCandidate): string {
  return `${setUps === 1 ? 'one form' : 'two forms'} set up, ${passes === 1 ? 'one pass' : 'two passes'}`;
}

function inkInWords({ ink, printer }: PlanCandidate): string {
  const range = `${showNumber(ink.ml, 1)} ml, between ${showNumber(ink.low, 1)} and ${showNumber(ink.high, 1)}`;
  return printer.ink.model.source === 'fitted'
    ? `${range}: learned from ${printer.ink.model.readings} readings of the printer's counter`
    : `${range}: a rule of thumb, until the printer's counter has been read`;
}

function wasteInWords({ area }: PlanCandidate): string {
  const share = (part: number) => showPercent(part / area.bought, 0);
  return `${share(area.waste)} of ${showNumber(area.bought, 2)} m²: margins and gutters ${share(area.aroundPieces)}, offcuts ${share(area.offcuts)}, overs and pieces left over ${share(area.spare)}`;
}
