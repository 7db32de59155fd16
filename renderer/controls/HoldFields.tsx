// How a printer holds the sheet: by which side guide, and by which edge along the feed.
import type { SheetHold } from '../../shared/geometry/register.ts';
import { Select } from './Choice.tsx';

const ACROSS = [
  { value: 'left', label: 'left' },
  { value: 'right', label: 'right' },
  { value: 'centre', label: 'none, sheet centred' },
] as const;

const ALONG = [
  { value: 'lead', label: 'lead edge' },
  { value: 'centre', label: 'none, sheet centred' },
] as const;

interface HoldFieldsProps {
  readonly hold: SheetHold;
  readonly onChange: (hold: SheetHold) => void;
}

export function HoldFields({ hold, onChange }: HoldFieldsProps) {
  return (
    <>
      <Select
        label="Side guide"
        value={hold.across}
        options={ACROSS}
        onChange={(across) => onChange({ ...hold, across })}
      />
      <Select
        label="Feed edge"
        value={hold.along}
        options={ALONG}
        onChange={(along) => onChange({ ...hold, along })}
      />
    </>
  );
}
