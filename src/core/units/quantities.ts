/**
 * Numbers that know their unit. A flavour costs nothing at run time: a plain number may enter anywhere, but a
 * value that is known to be grams does not compile where kilograms are asked for.
 */
declare const unit: unique symbol;
type Of<Unit extends string> = number & { readonly [unit]?: Unit };

export type Grams = Of<'g'>;
export type Kilograms = Of<'kg'>;
export type Milligrams = Of<'mg'>;
export type Millilitres = Of<'mL'>;
export type Kilocalories = Of<'kcal'>;
export type Kilojoules = Of<'kJ'>;
export type KilocaloriesPerDay = Of<'kcal/d'>;
export type Percent = Of<'%'>;
export type Metres = Of<'m'>;
export type Centimetres = Of<'cm'>;
export type Millimetres = Of<'mm'>;
export type Degrees = Of<'deg'>;
export type NewtonMetres = Of<'Nm'>;
export type Newtons = Of<'N'>;
export type Seconds = Of<'s'>;
/** Minutes since midnight of the prep day; 1470 is half past midnight of the same prep day. */
export type ClockMinutes = Of<'min of day'>;
export type Minutes = Of<'min'>;
export type Years = Of<'y'>;
/** Whole days since 1970-01-01 (proleptic Gregorian). */
export type DayNumber = Of<'day number'>;
