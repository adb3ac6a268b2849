import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { type LayerName, layerNames } from '../play/screen-state.ts';
import styles from './layer-bar.module.css';

const layerTexts: Readonly<Record<LayerName, string>> = {
  duties: 'Duties',
  reach: 'Sticks',
  lanes: 'Lanes',
  heat: 'Shot value',
};

export interface LayerBarProps {
  readonly layers: ReadonlySet<LayerName>;
  readonly onLayers: (layers: ReadonlySet<LayerName>) => void;
  readonly spots: readonly string[];
  /** Whose shots the shot value is about. */
  readonly shooter: string;
  readonly onShooter: (spot: string) => void;
}

/** What is drawn over the people while a play is watched. */
export function LayerBar({ layers, onLayers, spots, shooter, onShooter }: LayerBarProps): ReactNode {
  const toggle = (name: LayerName): void => {
    const next = new Set(layers);
    if (!next.delete(name)) next.add(name);
    onLayers(next);
  };
  return (
    <fieldset className={styles.bar} aria-label="Drawn over the field">
      {layerNames.map((name) => (
        <Button key={name} pressed={layers.has(name)} onClick={() => toggle(name)}>
          {layerTexts[name]}
        </Button>
      ))}
      {layers.has('heat') && (
        <PickList
          label="Shooter"
          quietLabel
          value={shooter}
          options={spots.map((spot) => ({ value: spot, text: `shots by ${spot}` }))}
          onChange={onShooter}
        />
      )}
    </fieldset>
  );
}
