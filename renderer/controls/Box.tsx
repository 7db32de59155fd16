// A box that lies over the window and wants an answer first.
import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import './controls.css';

export function Box({
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
        <Dialog role={urgent ? 'alertdialog' : 'dialog'} className="in-box">
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** The answers at the foot of a box, the one that is most often meant last. */
export function Answers({ children }: { readonly children: ReactNode }) {
  return <div className="answers">{children}</div>;
}
