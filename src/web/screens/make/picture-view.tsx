// Pieces that the engine drew.
import { useMemo } from 'react';
import styles from './pieces.module.css';
import type { Picture } from './worker/messages.js';

export function PictureView({ pictures }: { readonly pictures: readonly Picture[] }) {
  return (
    <div className={styles.pictures}>
      {pictures.map((picture) => (
        <Drawn key={picture.caption} {...picture} />
      ))}
    </div>
  );
}

function Drawn({ caption, svg }: Picture) {
  // One object for as long as the picture is the same, so that React leaves the drawing alone.
  const html = useMemo(() => ({ __html: svg }), [svg]);
  return (
    <figure className={styles.picture}>
      {/* The engine makes this string from numbers and escaped text alone. */}
      <div dangerouslySetInnerHTML={html} />
      <figcaption>{caption}</figcaption>
    </figure>
  );
}
