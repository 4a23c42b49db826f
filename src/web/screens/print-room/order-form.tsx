// The options of a print, only those that the chosen document has.
import type { DocumentName } from '#api/print.js';
import { Check } from '../../parts/check.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import type { BoardsChoice } from './documents.js';
import styles from './print-room.module.css';

export interface OrderOptions {
  readonly paper: 'A4' | 'A3' | 'Letter';
  readonly tiled: boolean;
  readonly perPage: 6 | 8;
  readonly names: boolean;
  readonly lowInk: boolean;
  readonly largePrint: boolean;
  readonly boards: BoardsChoice;
}

interface Props {
  readonly document: DocumentName;
  readonly options: OrderOptions;
  readonly hasYears: boolean;
  readonly onChange: (change: Partial<OrderOptions>) => void;
}

const PAPERS = ['A4', 'A3', 'Letter'] as const;

export function OrderForm({ document, options, hasYears, onChange }: Props) {
  const hasSlips = document === 'slips' || document === 'kit';
  const usesYears = document !== 'sheet' && document !== 'kit';
  return (
    <div className={styles.form}>
      <Row label="Paper">
        <ChoiceRow
          label="Paper"
          choices={PAPERS.map((id) => ({ id, label: id }))}
          chosen={options.paper}
          onChoose={(id) => onChange({ paper: PAPERS.find((paper) => paper === id) ?? 'A4' })}
        />
      </Row>
      {hasYears && usesYears && (
        <Row label="Boards">
          <ChoiceRow
            label="Boards"
            choices={[
              { id: 'class', label: 'Whole class' },
              { id: 'years', label: 'Each year' },
            ]}
            chosen={options.boards}
            onChoose={(id) => onChange({ boards: id === 'years' ? 'years' : 'class' })}
          />
        </Row>
      )}
      {hasSlips && (
        <Row label="Slips to a page">
          <ChoiceRow
            label="Slips to a page"
            choices={[
              { id: '6', label: '6' },
              { id: '8', label: '8' },
            ]}
            chosen={String(options.perPage)}
            onChoose={(id) => onChange({ perPage: id === '8' ? 8 : 6 })}
          />
        </Row>
      )}
      <div className={styles.checks}>
        {(document === 'poster' || document === 'kit') && (
          <Check isSelected={options.tiled} onChange={(tiled) => onChange({ tiled })}>
            Poster in parts to join
          </Check>
        )}
        {(hasSlips || document === 'sheet') && (
          <Check isSelected={options.names} onChange={(names) => onChange({ names })}>
            {document === 'slips'
              ? 'Names on the slips'
              : document === 'sheet'
                ? 'Names on the sheets'
                : 'Names on slips and sheets'}
          </Check>
        )}
        <Check isSelected={options.largePrint} onChange={(largePrint) => onChange({ largePrint })}>
          Large print
        </Check>
        <Check isSelected={options.lowInk} onChange={(lowInk) => onChange({ lowInk })}>
          Less ink
        </Check>
      </div>
      {document === 'sheet' || document === 'kit' ? (
        <p className={styles.care}>
          Print on both sides, flipped on the long edge. An adult laminates and cuts; follow your school’s
          rules for laminators and blades.
        </p>
      ) : (
        hasSlips && <p className={styles.care}>An adult cuts the slips.</p>
      )}
    </div>
  );
}

function Row({ label, children }: { readonly label: string; readonly children: React.ReactNode }) {
  return (
    <div className={styles.row}>
      <span className={styles.rowLabel} aria-hidden="true">
        {label}
      </span>
      {children}
    </div>
  );
}
