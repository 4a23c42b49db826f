// A labelled line to type in, with its hint and what is wrong with it.
import {
  FieldError,
  Input,
  Label,
  Text,
  TextArea,
  TextField,
  type TextFieldProps,
} from 'react-aria-components';
import styles from './text-input.module.css';

interface Props extends Omit<TextFieldProps, 'className'> {
  readonly label: string;
  readonly hint?: string;
  readonly placeholder?: string;
  /** Lines of a larger box; one line when left out. */
  readonly lines?: number;
}

export function TextInput({ label, hint, placeholder, lines, ...props }: Props) {
  return (
    <TextField {...props} className={styles.field ?? ''}>
      <Label className={styles.label ?? ''}>{label}</Label>
      {lines ? (
        <TextArea className={styles.box ?? ''} rows={lines} {...(placeholder ? { placeholder } : {})} />
      ) : (
        <Input className={styles.box ?? ''} {...(placeholder ? { placeholder } : {})} />
      )}
      {hint && (
        <Text slot="description" className={styles.hint ?? ''}>
          {hint}
        </Text>
      )}
      <FieldError className={styles.fault ?? ''} />
    </TextField>
  );
}
