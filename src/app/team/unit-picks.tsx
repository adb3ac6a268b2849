import type { ReactNode } from 'react';
import { Segments } from '../controls/segments.tsx';
import styles from './roster-view.module.css';
import { useTeam } from './team-state.ts';

/** In what speeds and heights are read and typed. */
export function UnitPicks(): ReactNode {
  const units = useTeam((state) => state.units);
  const choose = useTeam((state) => state.chooseUnits);
  return (
    <div className={styles.units}>
      <Segments
        label="Speeds in"
        value={units.speed}
        options={[
          { value: 'mph', text: 'mph' },
          { value: 'kmh', text: 'km/h' },
        ]}
        onChange={(speed) => choose({ speed })}
      />
      <Segments
        label="Heights in"
        value={units.height}
        options={[
          { value: 'ftIn', text: 'ft in' },
          { value: 'cm', text: 'cm' },
        ]}
        onChange={(height) => choose({ height })}
      />
    </div>
  );
}
