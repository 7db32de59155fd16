// Why something was spoiled: one of the usual reasons, or words of one's own.
import { useState } from 'react';
import { RadioButtons } from '../../controls/Choice.tsx';
import { Field } from '../../controls/Field.tsx';

const OTHER = 'other';

export function ReasonChoice({
  label,
  reasons,
  reason,
  onChange,
}: {
  readonly label: string;
  readonly reasons: readonly string[];
  readonly reason: string;
  readonly onChange: (reason: string) => void;
}) {
  const [other, setOther] = useState(false);
  const own = other || (reason !== '' && !reasons.includes(reason));
  return (
    <div className="count-reason">
      <RadioButtons
        label={label}
        value={own ? OTHER : reason === '' ? undefined : reason}
        options={[...reasons, OTHER].map((value) => ({ value, label: value }))}
        onChange={(value) => {
          setOther(value === OTHER);
          onChange(value === OTHER ? '' : value);
        }}
      />
      {own && <Field label="In your own words" value={reason} size="some" onChange={onChange} autoFocus />}
    </div>
  );
}
