import { type ReactNode, useState } from 'react';
import { TextField } from '../controls/text-field.tsx';

/** A name that is changed as a whole: on Enter or when the field is left; Escape brings the old one back. */
export function RenameField({
  label,
  value,
  onRename,
}: {
  readonly label: string;
  readonly value: string;
  readonly onRename: (name: string) => void;
}): ReactNode {
  const [typed, setTyped] = useState<string>();
  const finish = (): void => {
    if (typed !== undefined && typed.trim() !== '' && typed !== value) onRename(typed.trim());
    setTyped(undefined);
  };
  return (
    <TextField
      label={label}
      value={typed ?? value}
      onText={setTyped}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === 'Enter') finish();
        if (event.key === 'Escape') setTyped(undefined);
      }}
    />
  );
}
