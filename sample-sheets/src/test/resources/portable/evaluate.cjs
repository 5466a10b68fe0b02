// Reads a sheet as JSON rows, computes it, prints the rows' values; an error is {"error": "NA"}.
const fs = require('fs');
const { HyperFormula, DetailedCellError } = require('hyperformula');

const rows = JSON.parse(fs.readFileSync(process.argv[2], 'utf8'));
const engine = HyperFormula.buildFromArray(rows, {
  licenseKey: 'gpl-v3',
  smartRounding: false,
  maxRows: rows.length,
});
const values = engine
  .getSheetValues(0)
  .map((row) => row.map((v) => (v instanceof DetailedCellError ? { error: v.type } : v)));
fs.writeFileSync(process.argv[3], JSON.stringify(values));
