import { type ReactNode, useMemo, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import type { PaperName } from '../../render/index.ts';
import { dayWords, seasonPages } from '../../teach/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { FileTools } from '../teach/file-tools.tsx';
import { PageView } from '../teach/page-view.tsx';
import { filterWords } from './filter-bar.tsx';
import type { ChanceFilter } from './filter-chances.ts';
import styles from './season.module.css';

/** The season as it comes out of the printer: of the chances that are looked at. */
export function SeasonPaper({
  playbook,
  filter,
}: {
  readonly playbook: Playbook;
  readonly filter: ChanceFilter;
}): ReactNode {
  const [paper, setPaper] = useState<PaperName>('letter');
  const made = dayWords(new Date());
  const only = filterWords(playbook, filter);
  const { opponent } = filter;
  const printed = useMemo(
    () => seasonPages(playbook, { paper, made, ...(opponent !== '' && { opponent }), ...(only !== '' && { only }) }),
    [playbook, paper, made, opponent, only],
  );
  return (
    <section className={panel.panel} aria-label="The season on paper">
      <div className={styles.bar}>
        <PickList
          label="Paper"
          value={paper}
          options={[
            { value: 'letter', text: 'Letter' },
            { value: 'a4', text: 'A4' },
          ]}
          onChange={(name) => setPaper(name === 'a4' ? 'a4' : 'letter')}
        />
        <FileTools pages={printed} about="season" />
      </div>
      <PageView pages={printed.pages} />
    </section>
  );
}
