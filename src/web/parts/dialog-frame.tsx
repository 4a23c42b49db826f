// The frame of every dialog: title, what it is about, and a way out by Escape or a press outside.
import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import styles from './dialog-frame.module.css';

interface Props {
  readonly title: string;
  /** An alert dialog is announced at once: for what cannot be taken back. */
  readonly isAlert?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function DialogFrame({ title, isAlert = false, onClose, children }: Props) {
  return (
    <ModalOverlay
      className={styles.overlay ?? ''}
      isOpen
      isDismissable
      onOpenChange={(open) => !open && onClose()}
    >
      <Modal className={`${styles.modal} ${isAlert ? styles.narrow : ''}`}>
        <Dialog role={isAlert ? 'alertdialog' : 'dialog'} className={styles.dialog ?? ''}>
          <Heading slot="title" className={styles.title ?? ''}>
            {title}
          </Heading>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
