// The frame around a class's screens: where am I, which class, where else can I go.
import { useQuery } from '@tanstack/react-query';
import { Link, Outlet, useNavigate, useParams } from '@tanstack/react-router';
import styles from './frame.module.css';
import { stateQuery } from './queries.js';

const ROOMS = [
  { to: '/class/$classId/today', label: 'Today' },
  { to: '/class/$classId/make', label: 'Make' },
  { to: '/class/$classId/print', label: 'Print room' },
  { to: '/class/$classId/sets', label: 'Sets' },
  { to: '/class/$classId/practice', label: 'Practice' },
  { to: '/class/$classId/marking', label: 'Marking' },
  { to: '/class/$classId/understanding', label: 'Understanding' },
  { to: '/class/$classId/skills', label: 'Skills' },
  { to: '/class/$classId/children', label: 'Children' },
] as const;

export function ClassFrame() {
  const { classId } = useParams({ from: '/class/$classId' });
  const { data: state } = useQuery(stateQuery);
  const navigate = useNavigate();
  return (
    <>
      <a className={styles.skip} href="#main">
        Skip to the page
      </a>
      <header className={styles.top}>
        <Link to="/" className={styles.name ?? ''}>
          Afterbell
        </Link>
        <nav className={styles.rooms} aria-label="Rooms">
          {ROOMS.map(({ to, label }) => (
            <Link key={to} to={to} params={{ classId }}>
              {label}
            </Link>
          ))}
        </nav>
        <div className={styles.right}>
          <label>
            <span className="unseen">Class</span>
            <select
              value={classId}
              onChange={(event) => {
                const chosen = event.target.value;
                if (chosen === '') void navigate({ to: '/start' });
                else void navigate({ to: '/class/$classId/today', params: { classId: chosen } });
              }}
            >
              {state?.classes.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
              <option value="">Another class…</option>
            </select>
          </label>
          <Link to="/settings">Settings</Link>
        </div>
      </header>
      <main id="main" className={styles.page} tabIndex={-1}>
        <Outlet />
      </main>
    </>
  );
}
