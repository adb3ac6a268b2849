/** How far a search is, as a number for the eye: "about 40 %". More may be planned as it goes on, so it is about that. Nothing where nothing is being found. */
export function progressWords(
  search: { readonly kind: 'finding'; readonly answered: number; readonly planned: number } | { readonly kind: string },
): string | undefined {
  if (!('planned' in search)) return undefined;
  return `about ${Math.floor((100 * search.answered) / Math.max(1, search.planned))} %`;
}
