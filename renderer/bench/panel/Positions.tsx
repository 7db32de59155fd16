// The list of positions beside the canvas: all that the canvas shows of them, in words, to be chosen from.
import { memo } from 'react';
import { ListBox, ListBoxItem, ListLayout, type Selection, Virtualizer } from 'react-aria-components';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import type { Position } from '../../../shared/layout/position.ts';
import type { Unit } from '../../../shared/units/length.ts';
import { type NoteTone, Sign } from '../../controls/Note.tsx';
import { headInWords, nameInWords, placeInWords } from '../../sheet/pieces/placeInWords.ts';
import { app, useApp } from '../../state/store.ts';
import { useFindings } from '../findings.ts';
import { spoils } from '../paint/paintMarks.ts';

const ROW_HEIGHT_PX = 52;

export function Positions() {
  const arrangement = useApp((s) => s.history?.present.arrangement) ?? [];
  const unit = useApp((s) => s.history?.present.brief.units) ?? 'in';
  const selection = useApp((s) => s.selection);
  const choose = (keys: Selection) =>
    app.getState().select(keys === 'all' ? [...arrangement.keys()] : [...keys].map(Number));
  return (
    <Virtualizer layout={ListLayout} layoutOptions={{ rowHeight: ROW_HEIGHT_PX }}>
      <ListBox
        aria-label="Positions on the sheet"
        className="positions"
        selectionMode="multiple"
        selectionBehavior="replace"
        selectedKeys={selection.map(String)}
        onSelectionChange={choose}
        items={arrangement.map((position, index) => ({ id: String(index), position, index }))}
        dependencies={[unit]}
        escapeKeyBehavior="none"
        renderEmptyState={() => <p className="soft empty">No piece lies on the sheet.</p>}
      >
        {({ id, position, index }) => (
          <ListBoxItem id={id} className="position" textValue={nameInWords(position, index)}>
            <Row position={position} index={index} unit={unit} />
          </ListBoxItem>
        )}
      </ListBox>
    </Virtualizer>
  );
}

interface RowProps {
  readonly position: Position;
  readonly index: number;
  readonly unit: Unit;
}

const Row = memo(function Row({ position, index, unit }: RowProps) {
  const tone = useFindings((findings) => toneOf(findings, index));
  return (
    <>
      <span className="number">{index + 1}</span>
      <span className="named">
        <span className="piece-name" title={position.piece}>
          {position.piece}
        </span>
        <span className="soft">
          {position.face}, {headInWords(position.head)}
          <span className="unseen">, {placeInWords(position.trim, unit)}</span>
        </span>
      </span>
      {tone !== undefined && <Sign tone={tone} />}
    </>
  );
});

function toneOf(findings: readonly LayoutFinding[], index: number): NoteTone | undefined {
  const own = findings.filter((f) => f.positions.includes(index));
  if (own.length === 0) return undefined;
  return own.some(spoils) ? 'bad' : 'ask';
}
