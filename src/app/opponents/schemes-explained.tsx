import { type ReactNode, useState } from 'react';
import { Button } from '../controls/button.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { NewScheme } from './new-scheme.tsx';
import { allSchemes, schemeGroups } from './scheme-info.ts';
import styles from './schemes-explained.module.css';
import { StandPicture } from './stand-picture.tsx';

/** What each scheme is: a sentence, what it leaves open, and where its men are at home. */
export function SchemesExplained(): ReactNode {
  const playbook = usePlaybook();
  const [from, setFrom] = useState<string>();
  const schemes = allSchemes(playbook);
  return (
    <section className={styles.all} aria-label="What each scheme does">
      <h2 className={styles.title}>What each scheme does</h2>
      <p className={styles.about}>
        The other side&rsquo;s ways to play with a man less. Pick what an opponent plays on his page; take one down as a
        grid when he plays it another way.
      </p>
      {schemeGroups
        .filter(({ title }) => title !== 'Your own')
        .map(({ title, has }) => (
          <section key={title} className={styles.group} aria-label={title}>
            <h3 className={styles.groupTitle}>{title}</h3>
            <ul className={styles.list}>
              {schemes.filter(has).map(({ id, name, summary, leaves, men }) => (
                <li key={id} className={styles.scheme}>
                  <StandPicture men={men} named={false} />
                  <div className={styles.words}>
                    <h4 className={styles.name}>{name}</h4>
                    <p>{summary}</p>
                    <p className={styles.leaves}>Leaves open: {lowerFirst(leaves)}</p>
                    <Button tone="plain" className={styles.take} onClick={() => setFrom(id)}>
                      Write one like it<span className="spoken">: {name}</span>
                    </Button>
                  </div>
                </li>
              ))}
            </ul>
          </section>
        ))}
      <NewScheme
        key={from ?? ''}
        open={from !== undefined}
        onClose={() => setFrom(undefined)}
        {...(from !== undefined && { from })}
      />
    </section>
  );
}

function lowerFirst(words: string): string {
  return words.slice(0, 1).toLowerCase() + words.slice(1);
}
