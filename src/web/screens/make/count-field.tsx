// A small whole number: typed, stepped with the arrow keys, or with a finger on minus and plus.
import { Button, Group, Input, Label, NumberField } from 'react-aria-components';
import styles from './choices.module.css';

interface Props {
  readonly label: string;
  readonly value: number;
  readonly range: readonly [least: number, most: number];
  readonly onChange: (value: number) => void;
}

export function CountField({ label, value, range: [least, most], onChange }: Props) {
  return (
    <NumberField
      className={styles.count ?? ''}
      value={value}
      minValue={least}
      maxValue={most}
      step={1}
      onChange={(next) => Number.isFinite(next) && next !== value && onChange(next)}
    >
      <Label className={styles.label ?? ''}>{label}</Label>
      <Group className={styles.stepper ?? ''}>
        <Button slot="decrement">−</Button>
        <Input />
        <Button slot="increment">+</Button>
      </Group>
    </NumberField>
  );
}
