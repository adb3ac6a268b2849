import { X } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { forgetUnknownMen, type Opponent, setSchemeShare, setSchemeWeight } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { addressOf } from '../shell/place.ts';
import panel from './panel.module.css';
import { allSchemes, schemeGroups, schemeInfo } from './scheme-info.ts';
import styles from './scheme-mix.module.css';
import { sharesOf, shareText } from './shares.ts';
import { StandPicture } from './stand-picture.tsx';
import { andThen, useApply } from './use-apply.ts';

/** What an opponent is believed to play, and how often: weights that read as shares. */
export function SchemeMix({
  opponent,
  onWrite,
}: {
  readonly opponent: Opponent;
  readonly onWrite: () => void;
}): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const apply = useApply();
  const [picking, setPicking] = useState(false);
  const { id, name, schemes = {} } = opponent;
  const parts = sharesOf(schemes);
  const share = (scheme: string, percent: number): void => {
    const words = schemeInfo(playbook, scheme)?.name ?? scheme;
    apply(
      `weigh ${words}`,
      (book) => setSchemeShare(book, id, scheme, percent / 100),
      `weight:opponents/${id}/${scheme}`,
    );
  };
  const weigh = (scheme: string, weight: number): void => {
    const words = schemeInfo(playbook, scheme)?.name ?? scheme;
    const label = weight === 0 ? `take out ${words}` : `add ${words}`;
    apply(label, (book) => andThen(setSchemeWeight(book, id, scheme, weight), forgetUnknownMen));
  };
  return (
    <section className={panel.panel} aria-label="What they play">
      <h3 className={panel.title}>What they play</h3>
      {parts.length === 0 && (
        <p className={panel.quiet}>
          Nothing is known yet. Add what you believe they play, from film or from hearsay: your plays are then weighed
          against that mix.
        </p>
      )}
      {parts.length > 1 && (
        <div className={styles.bar} aria-hidden="true">
          {parts.map(({ scheme, share }) => (
            <span key={scheme} style={{ flexGrow: share }} />
          ))}
        </div>
      )}
      <ul className={styles.parts}>
        {parts.map(({ scheme, share: part }) => {
          const info = schemeInfo(playbook, scheme);
          const words = info?.name ?? scheme;
          return (
            <li key={scheme} className={styles.part}>
              {info === undefined ? <span /> : <StandPicture men={info.men} named={false} />}
              <div className={styles.words}>
                {info?.own === true ? (
                  <a className={styles.name} href={addressOf({ kind: 'opponents', opponent: scheme })}>
                    {words}
                  </a>
                ) : (
                  <span className={styles.name}>{words}</span>
                )}
                <p className={styles.about}>
                  {info?.summary ?? 'No scheme of this name is in the playbook any more. Take it out.'}
                </p>
              </div>
              <Button
                tone="plain"
                aria-label={`Take out ${words}`}
                icon={<X aria-hidden="true" />}
                onClick={() => weigh(scheme, 0)}
              />
              {parts.length === 1 ? (
                <p className={styles.weight}>All that they are believed to play.</p>
              ) : (
                <label className={styles.weight}>
                  <span className="spoken">How often they play {words}</span>
                  <input
                    type="range"
                    min="1"
                    max="99"
                    step="1"
                    // Every slider goes from never to always, so that knobs can be compared.
                    value={Math.round(100 * part)}
                    aria-valuetext={`${shareText(part)} of the time`}
                    onChange={(event) => share(scheme, Number(event.target.value))}
                    onPointerUp={() => store.settle()}
                    onBlur={() => store.settle()}
                  />
                  <output className={styles.share}>{shareText(part)}</output>
                </label>
              )}
            </li>
          );
        })}
      </ul>
      <div className={panel.tools}>
        <Button tone={parts.length === 0 ? 'main' : 'usual'} onClick={() => setPicking(true)}>
          Add a scheme
        </Button>
        <Button onClick={onWrite}>Write one of theirs</Button>
      </div>
      <Dialog
        open={picking}
        onClose={() => setPicking(false)}
        title={`What ${name} play`}
        about="Tick what you have seen or heard of. How often is said afterwards."
      >
        <div className={styles.groups}>
          {schemeGroups.map(({ title, has }) => {
            const here = allSchemes(playbook).filter(has);
            return here.length === 0 ? null : (
              <fieldset key={title} className={styles.group}>
                <legend>{title}</legend>
                {here.map((scheme) => (
                  <label key={scheme.id} className={styles.choice}>
                    <input
                      type="checkbox"
                      checked={schemes[scheme.id] !== undefined}
                      onChange={(event) => weigh(scheme.id, event.target.checked ? 1 : 0)}
                    />
                    <span>
                      <span className={styles.name}>{scheme.name}</span>
                      <span className={styles.about}>{scheme.summary}</span>
                    </span>
                  </label>
                ))}
              </fieldset>
            );
          })}
          <Button tone="main" onClick={() => setPicking(false)}>
            Done
          </Button>
        </div>
      </Dialog>
    </section>
  );
}
