// How a printer holds the sheet: by which side guide, and by which edge along the feed.
import type { Hold } from '../../shared/geometry/register.ts';
import { OneOf } from './Choice.tsx';

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
  readonly hold: Hold;
  readonly onChange: (hold: Hold) => void;
}

export function HoldFields({ hold, onChange }: HoldFieldsProps) {
  return (
    <>
      <OneOf
        label="Side guide"
        value={hold.across}
        options={ACROSS}
        onChange={(across) => onChange({ ...hold, across })}
      />
      <OneOf
        label="Feed edge"
        value={hold.along}
        options={ALONG}
        onChange={(along) => onChange({ ...hold, along })}
      />
    </>
  );
}
