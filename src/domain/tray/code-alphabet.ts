/** Thirteen letters that look like no digit and like no other letter when they are dusty. */
export const codeLetters = 'ACEFHJKMPRTWX';
export const codeDigits = '0123456789';
/** Every character that a code can hold, as the pad shows them. */
export const codeAlphabet = codeLetters + codeDigits;
