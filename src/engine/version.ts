/**
 * Version of everything that a simulated number depends on. It changes with every change that gives other numbers for the
 * same seed, and every report carries it.
 */
export const engineVersion = '0.1.0';
