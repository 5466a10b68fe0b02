// The same job by exceljs under Node, in so many threads: a small log as a whole workbook, since its
// stream of rows now and then loses the words of small files; a large one as streams of rows.
// The columns are known beforehand; the maths are our portable formulas (maths.js, made by ScriptMaths).
'use strict';

const fs = require('fs');
const path = require('path');
const { Worker, isMainThread, workerData } = require('worker_threads');

const NEW_HEADERS = [
  'Corrected gravity (SG)', 'Alcohol to date (% vol)', 'Apparent attenuation (%)', 'Real attenuation (%)',
];
const FIRST_NEW = 9;
const DEFLATE_LEVEL = 4;
const LARGE_BYTES = 1 << 20;

// What goes down the rows of one sheet: values count from 1.
function filler(maths) {
  let batch = null;
  let original = NaN;
  return (values, number) => {
    let gravity;
    if (values[2] === batch) {
      gravity = maths.correctedGravity(values[3], values[4], original);
    } else {
      batch = values[2];
      original = maths.originalGravity(values[3], values[4]);
      gravity = original;
    }
    const filled = [
      gravity, maths.alcohol(original, gravity),
      maths.apparentAttenuation(original, gravity), maths.realAttenuation(original, gravity),
    ];
    if (!filled.every(Number.isFinite)) {
      throw new Error(`row ${number} is refused`);
    }
    return filled;
  };
}

async function fillWhole(ExcelJS, maths, source, target) {
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile(source);
  book.eachSheet((sheet) => {
    const fill = filler(maths);
    sheet.eachRow((row, number) => {
      const filled = number === 1 ? NEW_HEADERS : fill(row.values, number);
      filled.forEach((value, i) => {
        row.getCell(FIRST_NEW + i).value = value;
      });
    });
  });
  await book.xlsx.writeFile(target, {
    zip: { compression: 'DEFLATE', compressionOptions: { level: DEFLATE_LEVEL } },
  });
}

async function fillStream(ExcelJS, maths, source, target) {
  const writer = new ExcelJS.stream.xlsx.WorkbookWriter({
    filename: target, useStyles: true, useSharedStrings: true, zip: { zlib: { level: DEFLATE_LEVEL } },
  });
  const reader = new ExcelJS.stream.xlsx.WorkbookReader(source, {
    worksheets: 'emit', sharedStrings: 'cache', styles: 'cache', hyperlinks: 'ignore', entries: 'ignore',
  });
  for await (const from of reader) {
    const to = writer.addWorksheet(from.name || 'Log');
    const fill = filler(maths);
    for await (const row of from) {
      const values = row.values;
      const filled = row.number === 1 ? NEW_HEADERS : fill(values, row.number);
      filled.forEach((value, i) => {
        values[FIRST_NEW + i] = value;
      });
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
    const source = path.join(from, file);
    const fill = fs.statSync(source).size > LARGE_BYTES ? fillStream : fillWhole;
    await fill(ExcelJS, maths, source, path.join(to, file));
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
