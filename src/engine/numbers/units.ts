// The units that measures are answered in: their written forms (both spellings) and how they convert within a kind of
// quantity. Sizes are exact by definition: metric prefixes (SI brochure, BIPM), inch = 25.4 mm and pound = 453.59237 g
// (international yard and pound agreement, 1959), US gallon = 231 cubic inches (from memory).
import { type Rational, rational } from './rational.js';

export interface Unit {
  /** Short form as printed: "cm", "mL", "°". */
  readonly symbol: string;
  /** Length, mass and so on: units of one quantity can be compared. */
  readonly quantity: string;
  /** Size in the quantity's base unit (mm, mm², mm³, mg, mL, second, month, degree, cent). */
  readonly size: Rational;
}

interface UnitRow extends Unit {
  readonly names: readonly string[];
}

function row(symbol: string, quantity: string, size: number | Rational, names: string): UnitRow {
  return {
    symbol,
    quantity,
    size: typeof size === 'number' ? rational(size) : size,
    names: names.split('|'),
  };
}

const ROWS: readonly UnitRow[] = [
  row('mm', 'length', 1, 'mm|millimetre|millimetres|millimeter|millimeters'),
  row('cm', 'length', 10, 'cm|cms|centimetre|centimetres|centimeter|centimeters'),
  row('m', 'length', 1000, 'm|metre|metres|meter|meters'),
  row('km', 'length', 1_000_000, 'km|kms|kilometre|kilometres|kilometer|kilometers'),
  row('in', 'length', rational(127, 5), 'in|inch|inches|"|in.'),
  row('ft', 'length', rational(1524, 5), "ft|foot|feet|'"),
  row('yd', 'length', rational(4572, 5), 'yd|yds|yard|yards'),
  row('mi', 'length', 1_609_344, 'mi|mile|miles'),
  row('mm²', 'area', 1, 'mm2|mm^2|sq mm|square mm|square millimetres|square millimeters'),
  row('cm²', 'area', 100, 'cm2|cm^2|sq cm|square cm|square centimetres|square centimetre|square centimeters'),
  row('m²', 'area', 1_000_000, 'm2|m^2|sq m|square m|square metres|square metre|square meters'),
  row('ha', 'area', 10_000_000_000, 'ha|hectare|hectares'),
  row('km²', 'area', 1_000_000_000_000, 'km2|km^2|sq km|square km|square kilometres|square kilometers'),
  row('cm³', 'volume', 1000, 'cm3|cm^3|cubic cm|cubic centimetres|cubic centimetre|cubic centimeters'),
  row('m³', 'volume', 1_000_000_000, 'm3|m^3|cubic m|cubic metres|cubic metre|cubic meters'),
  row('mg', 'mass', 1, 'mg|milligram|milligrams'),
  row('g', 'mass', 1000, 'g|gm|gms|gram|grams|gramme|grammes'),
  row('kg', 'mass', 1_000_000, 'kg|kgs|kilo|kilos|kilogram|kilograms'),
  row('t', 'mass', 1_000_000_000, 't|tonne|tonnes'),
  row('lb', 'mass', rational(45_359_237, 100), 'lb|lbs|pound|pounds'),
  row('oz', 'mass', rational(45_359_237, 1600), 'oz|ounce|ounces'),
  row('mL', 'capacity', 1, 'ml|mls|millilitre|millilitres|milliliter|milliliters'),
  row('L', 'capacity', 1000, 'l|litre|litres|liter|liters'),
  row('cup', 'capacity', rational(473_176_473, 2_000_000), 'cup|cups'),
  row('pt', 'capacity', rational(473_176_473, 1_000_000), 'pt|pint|pints'),
  row('qt', 'capacity', rational(473_176_473, 500_000), 'qt|quart|quarts'),
  row('gal', 'capacity', rational(473_176_473, 125_000), 'gal|gallon|gallons'),
  row('s', 'duration', 1, 's|sec|secs|second|seconds'),
  row('min', 'duration', 60, 'min|mins|minute|minutes'),
  row('h', 'duration', 3600, 'h|hr|hrs|hour|hours'),
  row('d', 'duration', 86_400, 'd|day|days'),
  row('wk', 'duration', 604_800, 'wk|wks|week|weeks'),
  row('mth', 'calendar', 1, 'mth|mths|month|months'),
  row('yr', 'calendar', 12, 'yr|yrs|year|years'),
  row('°', 'angle', 1, '°|deg|degs|degree|degrees'),
  row('°C', 'temperature', 1, '°c|degrees c|degrees celsius|celsius|deg c'),
  row('°F', 'fahrenheit', 1, '°f|degrees f|degrees fahrenheit|fahrenheit|deg f'),
  row('%', 'percent', 1, '%|percent|per cent|pc'),
];

const BY_NAME: ReadonlyMap<string, Unit> = new Map(
  ROWS.flatMap((unit) => unit.names.map((name) => [name, unit] as const)),
);

/** The unit that a lower-case name or symbol means ("cm", "centimeters", "sq m", "per cent"), or null. */
export function unitNamed(name: string): Unit | null {
  return BY_NAME.get(name) ?? null;
}
