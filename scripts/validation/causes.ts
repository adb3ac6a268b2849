/**
 * Why each red row of docs/validation.md is red, by the row's id: one plain sentence, and what would mend it where that is known.
 * A cause whose row is green, or that names no row, is reported by `npm run validate` so that it does not outlive its reason.
 */
export const causes: Readonly<Record<string, string>> = {};
