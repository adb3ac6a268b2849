import type { Clip } from '../../../render/index.ts';
import { pageFileName } from '../page-file-name.ts';

/** The name of a clip's file: `lantern-against-jump.mp4`; against several schemes `lantern-clip.html`. */
export function clipFileName({ play, schemes }: Pick<Clip, 'play' | 'schemes'>, ending: string): string {
  const [only, ...others] = schemes;
  const about = only !== undefined && others.length === 0 ? `against ${only.name}` : 'clip';
  return pageFileName(`${play} ${about}`, '', ending);
}
