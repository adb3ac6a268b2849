import type { ReactNode } from 'react';
import type { SchemeBelief } from '../../engine/index.ts';
import type { Opponent, Playbook } from '../../playbook/index.ts';
import { percent, reasonOfMark } from '../../render/index.ts';
import type { ScoutQuestion } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { schemeInfo } from '../opponents/scheme-info.ts';
import { useApply } from '../opponents/use-apply.ts';
import { acceptBelief } from './accept-belief.ts';
import styles from './belief-panel.module.css';
import { useFilm } from './film-state.ts';
import { PriorEditor } from './prior-editor.tsx';
import type { BeliefNews, ReadChance } from './use-belief.ts';

export interface BeliefPanelProps {
  readonly playbook: Playbook;
  readonly opponent: Opponent;
  readonly question: ScoutQuestion;
  readonly news: BeliefNews;
  /** Shows the moment of a mark. */
  readonly onShow: (chance: string, time: number, defender: number) => void;
}

/** Reasons that are shown; the others say less. */
const mostReasons = 6;

/** Which scheme the marks speak for, how surely, and which man at which moment says so. */
export function BeliefPanel(props: BeliefPanelProps): ReactNode {
  const { playbook, opponent, question, news } = props;
  const apply = useApply();
  return (
    <section className={panel.panel} aria-label="What they play, by the marks">
      <h3 className={panel.title}>What they play, by the marks</h3>
      <div role="status">
        <p className={panel.quiet}>{statusWords(playbook, news)}</p>
      </div>
      {news.kind === 'found' && (
        <>
          {news.belief.alike.length > 0 && <p>{alikeWords(playbook, question, news.belief)}</p>}
          <Bars playbook={playbook} belief={news.belief} isOld={news.isOld} />
          <Reasons {...props} belief={news.belief} films={news.films} />
          <div className={panel.tools}>
            <Button
              tone="main"
              disabled={news.isOld}
              onClick={() =>
                apply(`take the marks for what ${opponent.name} plays`, (book) =>
                  acceptBelief(book, opponent, news.belief, news.chances),
                )
              }
            >
              Take this for what they play
            </Button>
          </div>
        </>
      )}
      <PriorEditor playbook={playbook} opponent={opponent} question={question} />
    </section>
  );
}

function statusWords(playbook: Playbook, news: BeliefNews): string {
  switch (news.kind) {
    case 'nothing':
      return 'Mark the ball and the defenders at a moment, or tick what was seen: the schemes are then weighed here.';
    case 'working':
      return 'The schemes are being weighed.';
    case 'failed':
      return `The schemes could not be weighed: ${news.reason}.`;
    case 'found': {
      const [first, second] = sorted(news.belief);
      if (first === undefined) return '';
      const name = schemeInfo(playbook, first.scheme)?.name ?? first.scheme;
      const sure =
        first.share >= 0.9 ? 'Almost surely' : first.share >= 0.6 ? 'Most likely' : 'Not sure yet; likeliest';
      const other =
        second === undefined || first.share >= 0.9 ? '' : `, then ${schemeInfo(playbook, second.scheme)?.name}`;
      return `${sure}: ${name}, ${percent(first.share)}${other}.${news.isOld ? ' The newest marks are being weighed.' : ''}`;
    }
    default:
      return exhaustive(news);
  }
}

/** Schemes between which the marks say nothing, and what would. */
function alikeWords(playbook: Playbook, { schemes }: ScoutQuestion, { alike }: SchemeBelief): string {
  const names = alike.flatMap((at) => {
    const id = schemes[at]?.id;
    return id === undefined ? [] : [schemeInfo(playbook, id)?.name ?? id];
  });
  return `Nothing marked so far tells it from ${names.join(' or ')}: they stand alike with this set and this ball. Mark the ball at other men.`;
}

function Bars({
  playbook,
  belief,
  isOld,
}: {
  readonly playbook: Playbook;
  readonly belief: SchemeBelief;
  readonly isOld: boolean;
}): ReactNode {
  return (
    <table className={styles.table} data-old={isOld}>
      <thead>
        <tr>
          <th scope="col">Scheme</th>
          <th scope="col">
            <span className="spoken">Bar of its share</span>
          </th>
          <th scope="col">Now</th>
          <th scope="col">Before</th>
        </tr>
      </thead>
      <tbody>
        {sorted(belief).map(({ scheme, share, before }) => (
          <tr key={scheme} data-scheme={scheme}>
            <th scope="row">{schemeInfo(playbook, scheme)?.name ?? scheme}</th>
            <td className={styles.bar}>
              <svg width="100%" height="12" aria-hidden="true">
                <rect width="100%" height="12" className={styles.empty} />
                <rect width={`${100 * share}%`} height="12" className={styles.full} />
                <line x1={`${100 * before}%`} x2={`${100 * before}%`} y2="12" className={styles.before} />
              </svg>
            </td>
            <td className={styles.share}>{shareWords(share)}</td>
            <td className={styles.quiet}>{shareWords(before)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Reasons({
  playbook,
  question,
  belief,
  films,
  onShow,
}: BeliefPanelProps & { readonly belief: SchemeBelief; readonly films: readonly ReadChance[] }): ReactNode {
  const lit = useFilm((state) => state.lit);
  const names = {
    schemes: question.schemes.map(({ id }) => {
      const info = schemeInfo(playbook, id);
      return { name: info?.name ?? id, men: info?.men.map((man) => man.name) ?? [] };
    }),
  };
  const shown = belief.reasons.slice(0, mostReasons).flatMap((reason) => {
    const read = films[reason.film];
    const moment = read?.film?.moments[reason.moment];
    return read === undefined || moment === undefined
      ? []
      : [{ reason, chance: read.chance.id, time: moment.time, spots: read.spots, ball: read.spots[moment.ball] ?? '' }];
  });
  if (shown.length === 0) return null;
  return (
    <>
      <h4 className={styles.subtitle}>Which man says so</h4>
      <ul className={styles.reasons}>
        {shown.map(({ reason, chance, time, ball, spots }) => (
          <li key={`${chance} ${time} ${reason.mark}`}>
            <button
              type="button"
              className={styles.reason}
              aria-pressed={lit?.chance === chance && lit.time === time && lit.defender === reason.mark}
              onClick={() => onShow(chance, time, reason.mark)}
            >
              {reasonOfMark(reason, ball, { ...names, spots })}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function sorted({ schemes }: SchemeBelief): SchemeBelief['schemes'] {
  return [...schemes].sort((one, other) => other.share - one.share);
}

function shareWords(share: number): string {
  return share > 0 && share < 0.005 ? 'under 1 %' : percent(share);
}

function exhaustive(news: never): never {
  throw new TypeError(`unknown news: ${JSON.stringify(news)}`);
}
