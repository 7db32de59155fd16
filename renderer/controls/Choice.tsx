// One of a few: side by side where there is room, or in a list that opens.
import type { ReactNode } from 'react';
import {
  Button,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Radio,
  RadioGroup,
  Select,
  SelectValue,
} from 'react-aria-components';
import './controls.css';

export interface Option<V extends string> {
  readonly value: V;
  readonly label: string;
}

interface ChoiceProps<V extends string> {
  readonly label: string;
  readonly value: V | undefined;
  readonly options: readonly Option<V>[];
  readonly onChange: (value: V) => void;
}

/** All of them to be seen, one of them chosen. */
export function SideBySide<V extends string>({ label, value, options, onChange }: ChoiceProps<V>) {
  return (
    <RadioGroup
      className="side-by-side"
      value={value ?? null}
      onChange={(chosen) => onChange(chosen as V)}
      orientation="horizontal"
    >
      <Label>{label}</Label>
      <div className="row">
        {options.map((o) => (
          <Radio key={o.value} value={o.value} className="side">
            {o.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}

/** The chosen one to be seen, the others when it is opened. */
export function OneOf<V extends string>({ label, value, options, onChange }: ChoiceProps<V>) {
  return (
    <Select
      className="field one-of"
      value={value ?? null}
      onChange={(chosen) => onChange(String(chosen) as V)}
      placeholder="Choose"
    >
      <Label>{label}</Label>
      <Button className="opens">
        <SelectValue />
        <span aria-hidden="true" className="caret" />
      </Button>
      <Popover className="popover">
        <ListBox className="options">
          {options.map((o) => (
            <ListBoxItem key={o.value} id={o.value} textValue={o.label} className="option">
              {o.label}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}

/** One of several that each need a few lines to be told. */
export function Telling<V extends string>({
  label,
  value,
  options,
  onChange,
}: Omit<ChoiceProps<V>, 'options'> & {
  readonly options: readonly (Option<V> & { readonly tells: ReactNode; readonly off?: boolean })[];
}) {
  return (
    <RadioGroup
      className="telling"
      value={value ?? null}
      onChange={(chosen) => onChange(chosen as V)}
      aria-label={label}
    >
      {options.map((o) => (
        <Radio
          key={o.value}
          value={o.value}
          className="tale"
          isDisabled={o.off ?? false}
          aria-label={o.label}
        >
          <span className="dot" aria-hidden="true" />
          {o.tells}
        </Radio>
      ))}
    </RadioGroup>
  );
}
