// Something that is so or not.
import { Checkbox } from 'react-aria-components';
import './controls.css';

export function Tick({
  label,
  on,
  onChange,
}: {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}) {
  return (
    <Checkbox className="tick" isSelected={on} onChange={onChange}>
      <span className="box" aria-hidden="true">
        <svg viewBox="0 0 12 12" aria-hidden="true">
          <path d="M2 6.5 5 9.5 10 3" />
        </svg>
      </span>
      {label}
    </Checkbox>
  );
}
