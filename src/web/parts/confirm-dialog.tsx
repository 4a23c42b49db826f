// Asking once before something is gone for good.
import type { ReactNode } from 'react';
import { Button } from './button.js';
import { DialogFrame } from './dialog-frame.js';
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
    <DialogFrame title={title} isAlert onClose={onClose}>
      <p>{children}</p>
      <div className={styles.actions}>
        <Button onPress={onClose} autoFocus>
          Keep it
        </Button>
        <Button weight="main" onPress={onConfirm} isDisabled={isBusy}>
          {confirmLabel}
        </Button>
      </div>
    </DialogFrame>
  );
}
