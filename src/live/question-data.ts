import type { QuantityName } from '../../calculators/quantity/units.ts';

/** What a question needs to judge an answer. */
export interface QuestionData {
  readonly quantity: QuantityName;
  /** The unit meant when none is typed. */
  readonly unit: string;
  /** In SI, like the mistakes. */
  readonly answer: number;
  readonly mistakes: readonly { readonly value: number; readonly says: string }[];
}
