declare module 'js-quantities' {
  export interface Quantity {
    readonly scalar: number;
    toBase(): Quantity;
    isCompatible(other: Quantity): boolean;
  }
  /** @throws for a unit it does not know. */
  export default function quantity(scalar: number, unit: string): Quantity;
}
