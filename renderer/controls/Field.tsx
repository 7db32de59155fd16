// A field to type in, with its name, what is wrong with it, and a word of help.
import { useEffect, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import './controls.css';

export interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** What is wrong with what stands in it. */
  readonly wrong?: string | undefined;
  readonly hint?: string | undefined;
  readonly placeholder?: string | undefined;
  /** How much is usually typed into it. */
  readonly size?: 'few' | 'some' | 'all';
  readonly autoFocus?: boolean | undefined;
  readonly onEnter?: (() => void) | undefined;
}

export function Field(props: FieldProps) {
  const { label, value, onChange, wrong, hint, placeholder, size = 'all', autoFocus, onEnter } = props;
  return (
    <TextField
      className={`field ${size}`}
      value={value}
      onChange={onChange}
      isInvalid={wrong !== undefined}
      validationBehavior="aria"
      {...(autoFocus === undefined ? {} : { autoFocus })}
    >
      <Label>{label}</Label>
      <Input
        {...(placeholder === undefined ? {} : { placeholder })}
        spellCheck={false}
        onKeyDown={(e) => {
          if (e.key === 'Enter') onEnter?.();
        }}
      />
      {hint === undefined ? null : (
        <Text slot="description" className="hint">
          {hint}
        </Text>
      )}
      <FieldError className="wrong">{wrong}</FieldError>
    </TextField>
  );
}

/**
 * A field whose value is taken when it is left or Enter is pressed. `take` says what is wrong with it, if anything;
 * Escape puts back what was there.
 */
export function TakenField({
  value,
  take,
  ...rest
}: Omit<FieldProps, 'onChange' | 'wrong' | 'onEnter'> & {
  readonly take: (typed: string) => string | undefined;
}) {
  const [typed, setTyped] = useState(value);
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  useEffect(() => {
    setTyped(value);
    setWrong(undefined);
  }, [value]);
  const leave = () => setWrong(typed === value ? undefined : take(typed));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only hears what the field inside it does.
    <div
      className="taken"
      onBlur={leave}
      onKeyDown={(e) => {
        if (e.key !== 'Escape' || typed === value) return;
        e.stopPropagation();
        setTyped(value);
        setWrong(undefined);
      }}
    >
      <Field {...rest} value={typed} onChange={setTyped} wrong={wrong} onEnter={leave} />
    </div>
  );
}
