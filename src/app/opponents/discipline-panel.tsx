import { type ReactNode, useRef, useState } from 'react';
import { type DisciplineName, disciplineNames } from '../../engine/index.ts';
import { everyDefender, type Opponent, setDiscipline } from '../../playbook/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { levelWords } from '../team/team-words.ts';
import { defenderWords } from './defender-words.ts';
import styles from './discipline-panel.module.css';
import { disciplineMeaning, disciplineTitles, usualDiscipline } from './discipline-words.ts';
import panel from './panel.module.css';
import { type SchemeInfo, schemeInfo } from './scheme-info.ts';
import { StandPicture } from './stand-picture.tsx';
import { useApply } from './use-apply.ts';

/** How well an opponent plays what he plays: all of them, and single men by their names in the scheme, found on a picture of where they stand. */
export function DisciplinePanel({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const playbook = usePlaybook();
  const apply = useApply();
  const { id, name, discipline = {} } = opponent;
  const { level } = playbook.team;
  const schemes = Object.keys(opponent.schemes ?? {}).flatMap((scheme) => schemeInfo(playbook, scheme) ?? []);
  const [shown, setShown] = useState('');
  const scheme = schemes.find((one) => one.id === shown) ?? schemes[0];
  const [man, setMan] = useState<string>();
  const rows = useRef<HTMLUListElement>(null);
  const all = discipline[everyDefender];
  const usual = usualDiscipline(level, all);
  const say = (who: string, value: string): void => {
    const next = disciplineNames.find((each) => each === value);
    const label = who === everyDefender ? `discipline of ${name}` : `discipline of ${who}`;
    apply(label, (book) => setDiscipline(book, id, who, next));
  };
  const choose = (who: string): void => {
    setMan(who);
    rows.current?.querySelector<HTMLSelectElement>(`[data-man="${who}"] select`)?.focus();
  };
  return (
    <section className={panel.panel} aria-label="How well they play it">
      <h3 className={panel.title}>How well they play it</h3>
      <PickList
        label="All of them"
        value={all ?? ''}
        options={options(
          `As usual for ${levelWords[level]}: ${disciplineTitles[usualDiscipline(level, undefined)].toLowerCase()}`,
        )}
        onChange={(value) => say(everyDefender, value)}
      />
      <p className={panel.quiet}>{disciplineMeaning(usual).short}</p>
      {scheme === undefined ? (
        <p className={panel.quiet}>Single men can be told apart once there is a scheme that they play.</p>
      ) : (
        <>
          {schemes.length > 1 && (
            <PickList
              label="Single men, where they stand in"
              value={scheme.id}
              options={schemes.map((one) => ({ value: one.id, text: one.name }))}
              onChange={setShown}
            />
          )}
          <div className={styles.halves}>
            <StandPicture
              men={scheme.men}
              named
              label={`Where the men of ${scheme.name} are at home`}
              chosen={man}
              onChoose={choose}
              under={(who) => disciplineTitles[discipline[who] ?? usual].toLowerCase()}
            />
            <ul ref={rows} className={styles.men}>
              {scheme.men.map((one) => (
                <li key={one.name} data-man={one.name} className={styles.man} onFocus={() => setMan(one.name)}>
                  <PickList
                    label={`${one.name}, ${defenderWords(one.home)}, ${one.stick === 'short' ? 'short stick' : 'pole'}`}
                    value={discipline[one.name] ?? ''}
                    options={options(`Like all: ${disciplineTitles[usual].toLowerCase()}`)}
                    onChange={(value) => say(one.name, value)}
                  />
                </li>
              ))}
            </ul>
          </div>
          <Elsewhere discipline={discipline} schemes={schemes} scheme={scheme} />
        </>
      )}
      <details className={styles.meanings}>
        <summary>What the grades mean</summary>
        <dl>
          {disciplineNames.map((each) => (
            <div key={each}>
              <dt>{disciplineTitles[each]}</dt>
              <dd>{disciplineMeaning(each).figures}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

/** What is said of men of the other schemes, so that nothing counts that cannot be seen. */
function Elsewhere({
  discipline,
  schemes,
  scheme,
}: {
  readonly discipline: Readonly<Record<string, DisciplineName>>;
  readonly schemes: readonly SchemeInfo[];
  readonly scheme: SchemeInfo;
}): ReactNode {
  const here = new Set(scheme.men.map((one) => one.name));
  const others = Object.entries(discipline).filter(([who]) => who !== everyDefender && !here.has(who));
  if (others.length === 0) return null;
  const words = others.map(([who, value]) => {
    const where = schemes.find((one) => one.men.some((each) => each.name === who));
    return `${who} ${disciplineTitles[value].toLowerCase()}${where === undefined ? '' : ` in ${where.name}`}`;
  });
  return <p className={panel.quiet}>Besides: {words.join(', ')}.</p>;
}

function options(usual: string): readonly { readonly value: string; readonly text: string }[] {
  return [
    { value: '', text: usual },
    ...disciplineNames.map((each) => ({ value: each, text: disciplineTitles[each] })),
  ];
}
