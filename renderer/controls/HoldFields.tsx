// How a printer holds the sheet: by which side guide, and by which edge along the feed.
import type { Hold } from '../../shared/geometry/register.ts';
import { OneOf } from './Choice.tsx';

const ACROSS = [
  { value: 'left', label: 'to a guide on the left' },
  { value: 'right', label: 'to a guide on the right' },
  { value: 'centre', label: 'to the middle' },
] as const;

const ALONG = [
  { value: 'lead', label: 'by its lead edge' },
  { value: 'centre', label: 'to the middle' },
] as const;

interface HoldFieldsProps {
  /** What lays the sheet, to begin the first label with. */
  readonly who: string;
  readonly hold: Hold;
  readonly onChange: (hold: Hold) => void;
}

export function HoldFields({ who, hold, onChange }: HoldFieldsProps) {
  return (
    <>
      <OneOf
        label={`${who} lays the sheet, across`}
        value={hold.across}
        options={ACROSS}
        onChange={(across) => onChange({ ...hold, across })}
      />
      <OneOf
        label="and along"
        value={hold.along}
        options={ALONG}
        onChange={(along) => onChange({ ...hold, along })}
      />
    </>
  );
}
