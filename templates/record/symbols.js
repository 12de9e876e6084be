// Codes and keys as people type them: letters and digits without I, L, O and U, the last one a check symbol.
const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

function plain(typed) {
  return typed.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
}

function checks(symbols, length) {
  if (symbols.length !== length || [...symbols].some(symbol => !SYMBOLS.includes(symbol))) {
    return false;
  }
  const remainder = [...symbols.slice(0, -1)]
    .reduce((sum, symbol) => (sum * SYMBOLS.length + SYMBOLS.indexOf(symbol)) % 37, 0);
  return SYMBOLS[remainder] === symbols.slice(-1);
}

