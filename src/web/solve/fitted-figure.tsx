// A question's figure as large as its place allows: the place says how wide and high that is, in --most-w and --most-h.
import { drawFigure } from '#engine/figures/draw.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import styles from './fitted-figure.module.css';

interface Props {
  readonly figure: FigureSpec;
  readonly locale: LocaleId;
  readonly className: string | undefined;
}

export function FittedFigure({ figure, locale, className }: Props) {
  const { svg, widthMm, heightMm, alt } = drawFigure(figure, { locale });
  return (
    <span
      role="img"
      aria-label={alt}
      className={`${styles.figure} ${className}`}
      style={{ '--ratio': widthMm / heightMm, '--tall': `${heightMm}mm` } as object}
      // The engine makes this string from numbers and escaped text alone.
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
