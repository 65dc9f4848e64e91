import { scanNumber, type DecimalMark } from './number.ts';
import { unitOfText, type PrintedUnit } from './unit-text.ts';

/** A number and the unit printed beside it. */
export interface Quantity {
  readonly value: number;
  readonly unit: PrintedUnit;
}

/** Reads `25.5 °C`, `1840F`, `293 K`, `45 %`; null without a number or without a known unit. */
export const parseQuantity = (cell: string, decimalMark: DecimalMark): Quantity | null => {
  const scanned = scanNumber(cell, decimalMark);
  if (scanned === null || scanned.end === cell.length) return null;
  const unit = unitOfText(cell.slice(scanned.end));
  return unit === null ? null : { value: scanned.value, unit };
};
