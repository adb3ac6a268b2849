import { type FieldMarkings, fieldScene } from '../field-scene.ts';
import type { Primitive, View } from '../scene.ts';

/** The field without its yard scale, which men at the edge would stand on. */
export function bareField(field: FieldMarkings, view: View): readonly Primitive[] {
  return fieldScene(field, view).filter(({ style }) => style !== 'guide' && style !== 'yardText');
}
