// Shown for an address that leads nowhere.
import { Link } from '@tanstack/react-router';
import styles from './frame.module.css';

export function LostPage() {
  return (
    <main className={styles.page}>
      <h1>There is no page here</h1>
      <p>
        <Link to="/">Go to today’s warm-up</Link>
      </p>
    </main>
  );
}
