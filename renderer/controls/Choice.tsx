// One of a few: side by side where there is room, or in a list that opens.
import {
  Select as AriaSelect,
  Button,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Radio,
  RadioGroup,
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

/** A radio group, its options side by side. */
export function RadioButtons<V extends string>({ label, value, options, onChange }: ChoiceProps<V>) {
  return (
    <RadioGroup
      className="radio-buttons"
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

/** A list that opens; the selected option is seen. */
export function Select<V extends string>({ label, value, options, onChange }: ChoiceProps<V>) {
  return (
    <AriaSelect
      className="field select"
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
    </AriaSelect>
  );
}
