import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

interface DialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A question over the page; Escape and a press beside it close it, the focus goes back to where it was. */
export function Dialog({ title, open, onClose, children }: DialogProps) {
  return (
    <ModalOverlay className="overlay" isOpen={open} onOpenChange={(wanted) => !wanted && onClose()} isDismissable>
      <Modal className="modal" data-modal="">
        <AriaDialog className="dialog">
          <Heading slot="title">{title}</Heading>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
