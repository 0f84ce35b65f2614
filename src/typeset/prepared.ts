import { calculatorOf } from '../../calculators/catalogue.ts';
import { readInputs } from '../../calculators/inputs.ts';
import { work, type Working } from '../../calculators/work.ts';

/**
 * The working of a calculator for inputs written in content.
 * @param given texts as a reader would type them; others have their usual value.
 * @throws Error when the content asks for what cannot be worked: it fails the build.
 */
export function prepared(id: string, given: Readonly<Record<string, string>> = {}): Working {
  const calculator = calculatorOf(id);
  const unknown = Object.keys(given).find((name) => !calculator.given.some((one) => one.name === name));
  if (unknown !== undefined) throw new Error(`unknown given: ${unknown} (${id})`);
  const inputs = readInputs(calculator.given, given);
  if (!inputs.ok) throw new Error(`invalid inputs: ${inputs.problems.map(({ message }) => message).join(' ')}`);
  const worked = work(calculator, inputs.entries);
  if (!worked.ok) throw new Error(`no result: ${worked.refused.message} (${id})`);
  return worked.working;
}
