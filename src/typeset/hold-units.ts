const UNITS = 'mm|cm|m|km|µm|g|kg|N|kN|V|A|mA|W|J|Pa|MPa|GPa|Hz|s|ms|min|h|K|rpm|rad|ft|%|°C|ppm';
const apart = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\p{L}\\d]))`, 'gu');

/** A number and its unit stay on one line: `8 mm` with a space that does not break. */
export const holdUnits = (text: string): string => text.replace(apart, '$1\u00a0');
