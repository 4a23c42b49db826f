// Pieces that the engine drew.
import { useMemo } from 'react';
import styles from './pieces.module.css';
import type { Picture } from './worker/messages.js';

export function PictureView({ pictures }: { readonly pictures: readonly Picture[] }) {
  return (
    <div className={styles.pictures}>
      {pictures.map(({ caption, drawings }) => (
        <figure key={caption} className={`${styles.picture} ${drawings.length > 1 ? styles.many : ''}`}>
          <div className={styles.ground}>
            {drawings.map(({ svg, widthMm }) => (
              <Drawn key={svg} svg={svg} widthMm={widthMm} isAlone={drawings.length === 1} />
            ))}
          </div>
          <figcaption>{caption}</figcaption>
        </figure>
      ))}
    </div>
  );
}

interface DrawnProps {
  readonly svg: string;
  readonly widthMm: number;
  readonly isAlone: boolean;
}

/** Loose pieces are shown to one scale, so that they can be compared. */
const PX_PER_MM = 3;

function Drawn({ svg, widthMm, isAlone }: DrawnProps) {
  // One object for as long as the picture is the same, so that React leaves the drawing alone.
  const html = useMemo(() => ({ __html: svg }), [svg]);
  return (
    <div
      style={isAlone ? undefined : { width: `${widthMm * PX_PER_MM}px` }}
      // The engine makes this string from numbers and escaped text alone.
      dangerouslySetInnerHTML={html}
    />
  );
}
