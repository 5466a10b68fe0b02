// The same job by exceljs under Node: rows are read and written as streams, in so many threads.
// The columns are known beforehand; the maths are our portable formulas (maths.js, made by ScriptMaths).
'use strict';

const fs = require('fs');
const path = require('path');
const { Worker, isMainThread, workerData } = require('worker_threads');

const NEW_HEADERS = [
  'Corrected gravity (SG)', 'Alcohol to date (% vol)', 'Apparent attenuation (%)', 'Real attenuation (%)',
];
const FIRST_NEW = 9;

async function fill(ExcelJS, maths, source, target) {
  const writer = new ExcelJS.stream.xlsx.WorkbookWriter({
    filename: target, useStyles: true, useSharedStrings: true, zip: { zlib: { level: 4 } },
  });
  const reader = new ExcelJS.stream.xlsx.WorkbookReader(source, {
    worksheets: 'emit', sharedStrings: 'cache', styles: 'cache', hyperlinks: 'ignore', entries: 'ignore',
  });
  for await (const from of reader) {
    const to = writer.addWorksheet(from.name || 'Log');
    let batch = null;
    let original = NaN;
    for await (const row of from) {
      const values = row.values;
      let filled = NEW_HEADERS;
      if (row.number > 1) {
        let gravity;
        if (values[2] === batch) {
          gravity = maths.correctedGravity(values[3], values[4], original);
        } else {
          batch = values[2];
          original = maths.originalGravity(values[3], values[4]);
          gravity = original;
        }
        filled = [
          gravity, maths.alcohol(original, gravity),
          maths.apparentAttenuation(original, gravity), maths.realAttenuation(original, gravity),
        ];
        if (!filled.every(Number.isFinite)) {
          throw new Error(`${source}: row ${row.number} is refused`);
        }
      }
      for (let i = 0; i < filled.length; i++) {
        values[FIRST_NEW + i] = filled[i];
      }
      const written = to.addRow(values);
      if (row.number > 1) {
        written.getCell(1).numFmt = 'm/d/yy h:mm';
      }
      written.commit();
    }
    to.commit();
  }
  await writer.commit();
}

async function all(files, from, to) {
  const ExcelJS = require('exceljs');
  const maths = require('./maths.js');
  for (const file of files) {
    await fill(ExcelJS, maths, path.join(from, file), path.join(to, file));
  }
}

// Number of threads, folder of the logs, folder of the results.
if (isMainThread) {
  const [threads, from, to] = process.argv.slice(2);
  fs.mkdirSync(to, { recursive: true });
  const files = fs.readdirSync(from);
  if (files.length === 1) {
    all(files, from, to);
  } else {
    for (let i = 0; i < threads; i++) {
      new Worker(__filename, { workerData: { from, to, files: files.filter((_, n) => n % threads === i) } });
    }
  }
} else {
  all(workerData.files, workerData.from, workerData.to);
}
