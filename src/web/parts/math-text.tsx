// Question text as mathematics is written: fractions stacked, everything else as it stands.
import { Fragment } from 'react';
import styles from './math-text.module.css';

/** "1 3/4", "3/4" and "?/4" are set as stacked fractions, a whole and its part on one line; a screen reader hears the plain text. */
export function MathText({ text }: { readonly text: string }) {
  const parts = text.split(/((?:\d+[ \u00a0])?(?:\d+|\?)\/(?:\d+|\?))/);
  if (parts.length === 1) return <>{text}</>;
  return (
    <>
      <span className="unseen">{text}</span>
      <span aria-hidden="true">
        {parts.map((part, index) => {
          const [, whole, top, bottom] = /^(?:(\d+)[ \u00a0])?(\d+|\?)\/(\d+|\?)$/.exec(part) ?? [];
          // The same text always splits the same way, so the place is a stable key.
          const key = `${index}:${part}`;
          if (top === undefined || bottom === undefined) return <Fragment key={key}>{part}</Fragment>;
          return (
            <span key={key} className={styles.mixed}>
              {whole === undefined ? null : `${whole}\u00a0`}
              <span className={styles.fraction}>
                <span className={styles.top}>{top}</span>
                <span className={styles.bottom}>{bottom}</span>
              </span>
            </span>
          );
        })}
      </span>
    </>
  );
}
