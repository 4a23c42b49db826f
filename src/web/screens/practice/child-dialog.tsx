// One child's practice over the days: the counts as a line, the published band behind it, and what is still to put right.
import type { Ladder, SheetCount, TimedChild } from '#api/timed-room.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { DialogFrame } from '../../parts/dialog-frame.js';
import { MathText } from '../../parts/math-text.js';
import styles from './practice.module.css';

interface Props {
  readonly child: TimedChild;
  readonly ladder: Ladder;
  readonly onClose: () => void;
}

export function ChildDialog({ child, ladder, onClose }: Props) {
  const words = useWords();
  const onLevel = child.counts.filter(({ levelId }) => levelId === child.levelId);
  const title = ladder.levels.find(({ id }) => id === child.levelId)?.title ?? '';
  return (
    <DialogFrame title={`${child.shownAs}: ${title}`} onClose={onClose}>
      {onLevel.length === 0 ? (
        <p className={styles.soft}>No counted sheet on this level yet.</p>
      ) : (
        <Chart counts={onLevel} band={child.band} label={words.shortDate} />
      )}
      {child.band && (
        <p className={styles.soft}>
          The shaded strip is where many children of this age learn best: {child.band.low} to{' '}
          {child.band.high} right digits a minute ({child.band.source}). It says nothing about one child on
          one day.
        </p>
      )}
      <p>{child.suggestion.evidence}</p>
      {child.redo.length > 0 && (
        <>
          <h3>Still to put right</h3>
          <ul className={styles.redoList}>
            {child.redo.map(({ text, since, times }) => (
              <li key={text}>
                <MathText text={text} />{' '}
                <span className={styles.soft}>
                  since {words.shortDate(since)}
                  {times > 1 ? `, wrong ${times} times` : ''}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      <div className={styles.acts}>
        <Button onPress={onClose}>Close</Button>
      </div>
    </DialogFrame>
  );
}

interface ChartProps {
  readonly counts: readonly SheetCount[];
  readonly band: TimedChild['band'];
  readonly label: (date: string) => string;
}

const [WIDTH, HEIGHT, LEFT, BOTTOM] = [520, 220, 36, 24];

/** Right digits a minute, day by day; sheets without a clock are not drawn. */
function Chart({ counts, band, label }: ChartProps) {
  const timed = counts.filter((count) => count.digitsPerMinute !== null);
  if (timed.length === 0)
    return <p className={styles.soft}>All sheets of this level were without a clock.</p>;
  const rates = timed.map(({ digitsPerMinute }) => digitsPerMinute ?? 0);
  const most = Math.ceil((Math.max(...rates, band?.high ?? 0) + 1) / 10) * 10;
  const x = (i: number) => LEFT + ((WIDTH - LEFT - 12) * (i + 0.5)) / timed.length;
  const y = (rate: number) => HEIGHT - BOTTOM - ((HEIGHT - BOTTOM - 8) * rate) / most;
  const summary = timed.map(({ date }, i) => `${label(date)}: ${rates[i]}`).join('; ');
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className={styles.chart} role="img">
      <title>{`Right digits a minute. ${summary}.`}</title>
      {band && (
        <rect
          x={LEFT}
          width={WIDTH - LEFT - 12}
          y={y(Math.min(most, band.high))}
          height={y(band.low) - y(Math.min(most, band.high))}
          className={styles.band}
        />
      )}
      {[0, most / 2, most].map((rate) => (
        <g key={rate}>
          <line x1={LEFT} x2={WIDTH - 12} y1={y(rate)} y2={y(rate)} className={styles.gridLine} />
          <text x={LEFT - 6} y={y(rate) + 4} textAnchor="end">
            {rate}
          </text>
        </g>
      ))}
      <polyline points={rates.map((rate, i) => `${x(i)},${y(rate)}`).join(' ')} className={styles.line} />
      {rates.map((rate, i) => (
        <circle key={timed[i]?.date} cx={x(i)} cy={y(rate)} r={4.5} className={styles.dot} />
      ))}
      {timed.map(({ date }, i) =>
        i % Math.ceil(timed.length / 5) === 0 ? (
          <text key={date} x={x(i)} y={HEIGHT - 6} textAnchor="middle">
            {label(date)}
          </text>
        ) : null,
      )}
    </svg>
  );
}
