const plain: Readonly<Record<string, string>> = {
  '’': "'",
  '‘': "'",
  '“': '"',
  '”': '"',
  '–': '-',
  '−': '-',
  '×': 'x',
  '·': '*',
  '…': '...',
  '°': ' deg',
  '±': '+/-',
};

/** Prose for programs that may not expect more: quotation marks, dashes and the like in ASCII; letters are left as they are. */
export const ascii = (text: string): string => text.replace(/[’‘“”–−×·…°±]/g, (sign) => plain[sign] ?? sign);
