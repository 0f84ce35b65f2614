/** Greek letters by the names TeX gives them, lower and upper case, with the character. */
const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
  Delta: 'Δ',
  Theta: 'Θ',
  Sigma: 'Σ',
  Phi: 'Φ',
  Psi: 'Ψ',
  Omega: 'Ω',
};

/** Letters whose plain TeX form is the rarer shape. */
const preferred: Readonly<Record<string, string>> = { phi: '\\varphi', epsilon: '\\varepsilon' };

interface Symbol {
  readonly base: string;
  readonly subscripts: readonly string[];
}

/** `z1` is z with subscript 1, `v_x` v with subscript x, `omega_max` omega with subscript max; `i` marks one wheel of many. */
function split(name: string, list: boolean): Symbol {
  const [head = '', ...rest] = name.split('_');
  const [, base = head, digits = ''] = /^([A-Za-z]+?)(\d*)$/.exec(head) ?? [];
  const subscripts = [digits, ...rest].filter(Boolean);
  return { base, subscripts: list && base !== 'i' && !subscripts.includes('i') ? [...subscripts, 'i'] : subscripts };
}

/** What changes in a difference: `dt` is Δt, `dtheta` Δθ. A `d` before anything longer than a letter is part of a word. */
const changed = (text: string): string | undefined => {
  const rest = /^d(.+)$/.exec(text)?.[1];
  return rest !== undefined && (rest.length === 1 || Object.hasOwn(greek, rest)) ? rest : undefined;
};

const piece = (text: string): string => {
  if (Object.hasOwn(greek, text)) return preferred[text] ?? `\\${text}`;
  const rest = changed(text);
  if (rest !== undefined) return `\\Delta ${piece(rest)}`;
  return text.length === 1 || /^\d+$/.test(text) ? text : `\\mathrm{${text}}`;
};

/** The TeX of a name: `\\omega_{\\mathrm{max}}`. */
export function symbolTex(name: string, list = false): string {
  const { base, subscripts } = split(name, list);
  return subscripts.length === 0 ? piece(base) : `${piece(base)}_{${subscripts.map(piece).join('\\,')}}`;
}

/** The name in running text without markup: `ω_max`. */
export function symbolText(name: string, list = false): string {
  const { base, subscripts } = split(name, list);
  return [base, ...subscripts].map(letters).join('_');
}

function letters(part: string): string {
  const rest = changed(part);
  if (rest !== undefined) return `Δ${letters(rest)}`;
  return Object.hasOwn(greek, part) ? (greek[part] ?? part) : part;
}
