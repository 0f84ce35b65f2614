/** What was asked on the command line. */
export interface Asked {
  readonly id: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly as: string;
}

/** A mistake in the call: one clear sentence for the person, exit status 2. */
export class CallError extends Error {}

/**
 * Reads `belt-length p=5mm z1=18 --as markdown`.
 * @throws CallError
 */
export function readArguments(args: readonly string[], forms: readonly string[]): Asked {
  const texts: Record<string, string> = {};
  let id: string | undefined;
  let as = forms[0] ?? '';
  for (let k = 0; k < args.length; k++) {
    const arg = args[k] ?? '';
    const pair = /^([A-Za-z]\w*)=(.*)$/s.exec(arg);
    if (arg === '--as' || arg.startsWith('--as=')) {
      as = arg === '--as' ? (args[++k] ?? '') : arg.slice('--as='.length);
      if (!forms.includes(as)) throw new CallError(`--as takes one of ${forms.join(', ')}, not “${as}”.`);
    } else if (pair) {
      const [, name = '', text = ''] = pair;
      if (Object.hasOwn(texts, name)) throw new CallError(`${name} is given twice.`);
      texts[name] = text;
    } else if (arg.startsWith('-')) {
      throw new CallError(`There is no option ${arg}. See --help.`);
    } else if (id === undefined) {
      id = arg;
    } else {
      throw new CallError(`“${arg}” is not of the form name=value; ${id} is the calculator already.`);
    }
  }
  if (id === undefined) throw new CallError('Name a calculator; --list shows them all.');
  return { id, texts, as };
}
