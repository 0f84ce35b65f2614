/** Where the pages measured are served. */
export interface Addresses {
  /** The site, with a slash at the end. */
  readonly site: string;
  readonly lesson: string;
  readonly handWritten: string;
}
