// A modal dialog over the window.
import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import './controls.css';

export function Dialog({
  title,
  children,
  onClose,
  width = 'middling',
  urgent = false,
}: {
  readonly title: string;
  readonly children: ReactNode;
  /** What Escape does. */
  readonly onClose: () => void;
  readonly width?: 'narrow' | 'middling' | 'broad' | 'whole';
  /** Something is lost or broken unless it is answered. */
  readonly urgent?: boolean;
}) {
  return (
    <ModalOverlay
      className="veil"
      isOpen
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className={`box ${width}`}>
        <AriaDialog role={urgent ? 'alertdialog' : 'dialog'} className="in-box">
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}

/** The answers at the foot of a dialog, the one that is most often meant last. */
export function DialogAnswers({ children }: { readonly children: ReactNode }) {
  return <div className="answers">{children}</div>;
}
