/**
 * Two places closer than this are the same place, yd. A nanometre: far below anything that is measured, far above the
 * rounding of doubles on a field, and its square's reciprocal is still an ordinary number.
 */
export const samePlace = 1e-9;

/** The square of `samePlace`, for tests that need no root, yd^2. */
export const samePlaceSquared = samePlace * samePlace;
