// A button, by how much it matters.
import type { ReactNode } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import './controls.css';

export interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  /** `main`: what one comes for, once on a stage. `quiet`: without a frame, beside other things. */
  readonly kind?: 'main' | 'plain' | 'quiet';
  /** What it does, where its words do not say so by themselves. */
  readonly label?: string | undefined;
  readonly disabled?: boolean | undefined;
  readonly autoFocus?: boolean | undefined;
  /** It sends off the form that it stands in, as Enter in a field does. */
  readonly submits?: boolean | undefined;
}

export function Button({
  children,
  onPress,
  kind = 'plain',
  label,
  disabled = false,
  autoFocus,
  submits,
}: ButtonProps) {
  return (
    <AriaButton
      className={`button ${kind}`}
      isDisabled={disabled}
      type={submits === true ? 'submit' : 'button'}
      {...(onPress === undefined ? {} : { onPress })}
      {...(label === undefined ? {} : { 'aria-label': label })}
      {...(autoFocus === undefined ? {} : { autoFocus })}
    >
      {children}
    </AriaButton>
  );
}
