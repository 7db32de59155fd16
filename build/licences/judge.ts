// Whether something may ship under its licence: only what gives everybody the same freedom and asks nothing of our own code.

/** As SPDX names them. */
const FREE = new Set([
  '0BSD',
  'Apache-2.0',
  'Bitstream-Vera',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'FTL',
  'IJG',
  'ISC',
  'LicenseRef-AGG-2.3',
  'MIT',
  'Zlib',
]);

/** A choice between licences is not made here: whoever adds such a package looks at it and names the one taken. */
export function mayShip(licence: string): boolean {
  return licence.split(' AND ').every((one) => FREE.has(one));
}
