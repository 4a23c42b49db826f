// Strips in the air under fingers or a mouse, and where each would lie.
import type { CSSProperties } from 'react';
import type { Chain } from '#engine/activities/chain/chain.js';
import styles from './chain-table.module.css';
import type { StripFit } from './fit-strips.js';
import type { ChainPlace } from './place-under.js';
import { StripFace } from './strip-face.js';
import type { Drag } from './use-drag.js';
import { fitStyle } from './use-strip-fit.js';

interface Props {
  readonly chain: Chain;
  readonly fit: StripFit;
  readonly drags: readonly Drag<ChainPlace | 'tray'>[];
}

export function CarriedStrips({ chain, fit, drags }: Props) {
  const { widthPx, heightPx } = fit;
  return drags.map(({ pointer, piece, x, y, grip, over }) => {
    const card = chain.cards[piece];
    const moved = `translate(${x - grip[0] * widthPx}px, ${y - grip[1] * heightPx}px)`;
    return (
      card && (
        <div key={pointer} className={styles.air} style={fitStyle(fit) as CSSProperties} aria-hidden="true">
          {over !== null && over !== 'tray' && over.mark && (
            <div className={styles.marker} style={over.mark} />
          )}
          <div className={styles.carried} style={{ transform: moved }}>
            <StripFace card={card} locale={chain.locale} isLaid />
          </div>
        </div>
      )
    );
  });
}
