// Buttons in three weights: the one main action of a place, an ordinary one, and a quiet one.
import { Button as AriaButton, type ButtonProps } from 'react-aria-components';
import styles from './button.module.css';

export type Weight = 'main' | 'plain' | 'quiet';

export function Button({ weight = 'plain', ...props }: ButtonProps & { readonly weight?: Weight }) {
  return <AriaButton {...props} className={`${styles.button} ${styles[weight]}`} />;
}
