import type { ReactNode } from 'react';
import { type FilmFormName, filmFormNames } from '../../../render/index.ts';
import { PickList } from '../../controls/pick-list.tsx';
import { useScreen } from '../../play/screen-state.ts';
import { type ClipFormat, clipFilmOptions } from './clip-choices.ts';
import { useClipChoices } from './clip-state.ts';

const formWords: Readonly<Record<FilmFormName, string>> = {
  wide: 'wide, for a screen',
  tall: 'tall, for a phone held upright',
  card: 'small, for a message',
};

/** The side of the field, shared with every other place. */
export function SideChoice(): ReactNode {
  const side = useScreen((state) => state.side);
  const change = useScreen((state) => state.change);
  return (
    <PickList
      label="Played on"
      value={side}
      options={[
        { value: 'right', text: 'the right side' },
        { value: 'left', text: 'the left side' },
      ]}
      onChange={(value) => change({ side: value === 'left' ? 'left' : 'right' })}
    />
  );
}

/** What a film has and a page has not: its form and its speed, which nobody can change while it plays. */
export function FilmChoices({ format }: { readonly format: ClipFormat }): ReactNode {
  const { form, speed, change } = useClipChoices();
  return (
    <>
      <PickList
        label="Picture"
        value={clipFilmOptions(format, form, speed).form}
        options={filmFormNames.map((name) => ({ value: name, text: formWords[name] }))}
        onChange={(value) => change({ form: filmFormNames.find((name) => name === value) })}
      />
      <PickList
        label="Speed"
        value={String(speed)}
        options={[
          { value: '0.5', text: 'half, to read along' },
          { value: '1', text: 'real' },
        ]}
        onChange={(value) => change({ speed: value === '1' ? 1 : 0.5 })}
      />
    </>
  );
}
