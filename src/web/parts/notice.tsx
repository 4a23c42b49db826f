// One sentence the teacher should see, with its mend.
import type { ReactNode } from 'react';
import styles from './notice.module.css';

type Tone = 'calm' | 'look';

/** A `look` notice is announced at once; a `calm` one when the reader is free. */
export function Notice({
  tone = 'calm',
  title,
  children,
}: {
  readonly tone?: Tone;
  readonly title?: string;
  readonly children?: ReactNode;
}) {
  return (
    <div className={`${styles.notice} ${styles[tone]}`} role={tone === 'look' ? 'alert' : 'status'}>
      {title && <strong>{title}</strong>} {children}
    </div>
  );
}
