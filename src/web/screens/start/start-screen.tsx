// The first page: start with my class, or look around with an invented one.
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { call, sentencesOf } from '../../app/client.js';
import { stateQuery } from '../../app/queries.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { NewClassForm } from './new-class-form.js';
import styles from './start.module.css';

export function StartScreen() {
  const [isMaking, setIsMaking] = useState(false);
  const queries = useQueryClient();
  const navigate = useNavigate();
  const { data: state } = useQuery(stateQuery);
  const open = async (classId: string) => {
    await queries.invalidateQueries({ queryKey: stateQuery.queryKey });
    await navigate({ to: '/class/$classId/today', params: { classId } });
  };
  const demo = useMutation({ mutationFn: () => call('startDemo', {}, {}), onSuccess: ({ id }) => open(id) });
  const known = state?.classes.find((one) => one.demo);
  return (
    <main className={styles.page}>
      <header className={styles.head}>
        <p className={styles.name}>Afterbell</p>
        <h1>{isMaking ? 'Your class' : 'The minutes right after the bell'}</h1>
        {!isMaking && (
          <p className={styles.lead}>
            One number, a ladder of questions, from one that everyone can do to one for the child who wants
            more. Made for your class each morning, ready to show, print and mark.
          </p>
        )}
      </header>
      {isMaking ? (
        <NewClassForm onMade={open} onBack={() => setIsMaking(false)} />
      ) : (
        <div className={styles.ways}>
          <section>
            <h2>Start with my class</h2>
            <p>Paste the names, choose the years. It takes about two minutes.</p>
            <Button weight="main" onPress={() => setIsMaking(true)}>
              Start with my class
            </Button>
          </section>
          <section>
            <h2>Look around first</h2>
            <p>An invented class of 27 in Years 4 and 5, with three boards marked already.</p>
            <Button onPress={() => (known ? void open(known.id) : demo.mutate())} isDisabled={demo.isPending}>
              {demo.isPending ? 'Making the demo class…' : 'Open the demo class'}
            </Button>
          </section>
        </div>
      )}
      {demo.error && (
        <Notice tone="look" title={sentencesOf(demo.error).message}>
          {sentencesOf(demo.error).hint}
        </Notice>
      )}
      <p className={styles.home}>
        Names and results stay in a folder on this computer. Nothing is sent anywhere. Follow your school’s
        own privacy rules for what you keep here.
      </p>
    </main>
  );
}
