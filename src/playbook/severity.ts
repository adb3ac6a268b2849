/** An error keeps the file from being used, a warning does not, a note is only worth knowing. */
export type Severity = 'error' | 'warning' | 'note';
