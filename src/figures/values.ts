/** What a figure is handed: SI values of a finished calculation, by name. */
export type FigureValues = Readonly<Record<string, number | readonly number[]>>;

export const number = (values: FigureValues, name: string): number => {
  const value = values[name];
  if (typeof value !== 'number') throw new Error(`missing value for a figure: ${name}`);
  return value;
};

export const list = (values: FigureValues, name: string): readonly number[] => {
  const value = values[name];
  if (typeof value !== 'object') throw new Error(`missing list for a figure: ${name}`);
  return value;
};
