// Asking once before something is gone for good.
import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Button } from './button.js';
import styles from './confirm-dialog.module.css';

interface Props {
  readonly title: string;
  readonly confirmLabel: string;
  readonly isBusy: boolean;
  readonly onConfirm: () => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function ConfirmDialog({ title, confirmLabel, isBusy, onConfirm, onClose, children }: Props) {
  return (
    <ModalOverlay
      className={styles.overlay ?? ''}
      isOpen
      isDismissable
      onOpenChange={(open) => !open && onClose()}
    >
      <Modal className={styles.modal ?? ''}>
        <Dialog role="alertdialog" className={styles.dialog ?? ''}>
          <Heading slot="title" className={styles.title ?? ''}>
            {title}
          </Heading>
          <p>{children}</p>
          <div className={styles.actions}>
            <Button onPress={onClose} autoFocus>
              Keep it
            </Button>
            <Button weight="main" onPress={onConfirm} isDisabled={isBusy}>
              {confirmLabel}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
