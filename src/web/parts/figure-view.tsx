// A question's figure, drawn by the engine, on a paper-white card so that it looks the same in dark and light.
import { drawFigure } from '#engine/figures/draw.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import styles from './figure-view.module.css';

/**
 * `locale` groups the figure's digits as the question's are. `scale` is CSS pixels per millimetre of the figure; 3.78 is natural size on a screen of 96 dpi.
 */
export function FigureView({
  figure,
  locale,
  scale = 3.78,
}: {
  readonly figure: FigureSpec;
  readonly locale: LocaleId;
  readonly scale?: number;
}) {
  const { svg, widthMm, heightMm, alt } = drawFigure(figure, { locale });
  return (
    <span
      role="img"
      aria-label={alt}
      className={styles.figure}
      style={{ width: `${widthMm * scale}px`, aspectRatio: `${widthMm} / ${heightMm}` }}
      // The engine makes this string from numbers and escaped text alone.
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
