import { schemeList } from '../engine/index.ts';

/** Ids of the schemes that are built in. */
export const knownSchemes: readonly string[] = schemeList.map((scheme) => scheme.id);
