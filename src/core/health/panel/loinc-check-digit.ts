/**
 * Whether the last digit of a LOINC code fits the others: Mod 10, as the code list's manual says (every other digit
 * doubled from the right, the digits summed). A slip of one digit, and most swaps of neighbours, are found.
 */
export function hasLoincCheckDigit(loinc: string): boolean {
  const [number = '', check = ''] = loinc.split('-');
  let sum = 0;
  for (let fromRight = 0; fromRight < number.length; fromRight++) {
    const digit = Number(number[number.length - 1 - fromRight]);
    const doubled = fromRight % 2 === 0 ? digit * 2 : digit;
    sum += doubled > 9 ? doubled - 9 : doubled;
  }
  return number.length > 0 && (10 - (sum % 10)) % 10 === Number(check);
}
