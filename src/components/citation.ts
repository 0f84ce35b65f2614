interface Source {
  readonly authors: string;
  readonly title: string;
  readonly edition?: string | undefined;
  readonly year: string;
  readonly publisher: string;
}

/** A source as a reference list prints it. */
export const citation = ({ authors, title, edition, year, publisher }: Source): string =>
  `${authors}: ${title}${edition ? `, ${edition}` : ''}. ${publisher}, ${year}.`;
