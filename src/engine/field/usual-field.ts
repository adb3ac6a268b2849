import { type Landmarks, landmarksOf } from './landmarks.ts';
import { nfhs } from './nfhs.ts';

/**
 * The field on which every chance is simulated, yards: high school's, which shares its lines with college.
 *
 * A chance does not follow its rule code's own lines (a narrower field, a crease in metres): the plays, schemes and places that
 * it runs are drawn for these.
 */
export const usualField: Landmarks = landmarksOf(nfhs.markings);
