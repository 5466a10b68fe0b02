package washbook.runner.bench;

import java.io.BufferedOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * The same job by POI's streams: the parts of the workbook by XSSFReader, its cells by StAX, and
 * SXSSF writes them into a new workbook. The columns are known beforehand.
 */
final class StreamingFill {
  private static final int WINDOW = 100;

  private final ReadOnlySharedStringsTable strings;
  private final Sheet to;
  private final CellStyle date;
  private final KnownColumns columns = new KnownColumns();

  private StreamingFill(ReadOnlySharedStringsTable strings, Sheet to, CellStyle date) {
    this.strings = strings;
    this.to = to;
    this.date = date;
  }

  /** Number of threads, folder of the logs, folder of the results. */
  public static void main(String[] arguments) throws Exception {
    EachFile.in(
        Path.of(arguments[1]),
        Path.of(arguments[2]),
        Integer.parseInt(arguments[0]),
        StreamingFill::fill);
  }

  private static void fill(Path source, Path target) throws Exception {
    try (OPCPackage container = OPCPackage.open(source.toFile(), PackageAccess.READ);
        Book book = new Book()) {
      XSSFReader reader = new XSSFReader(container);
      CellStyle date = book.createCellStyle();
      date.setDataFormat(book.createDataFormat().getFormat(KnownColumns.DATE_FORMAT));
      XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
      ReadOnlySharedStringsTable strings = new ReadOnlySharedStringsTable(container);
      while (sheets.hasNext()) {
        try (InputStream sheet = sheets.next()) {
          new StreamingFill(strings, book.createSheet(sheets.getSheetName()), date).copy(sheet);
        }
      }
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(target), 1 << 16)) {
        book.write(out);
      }
    }
  }

  /** One that deflates at the level of the product. */
  private static final class Book extends SXSSFWorkbook {
    Book() {
      super(WINDOW);
    }

    @Override
    protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
      ZipArchiveOutputStream zip = super.createArchiveOutputStream(out);
      zip.setLevel(KnownColumns.DEFLATE_LEVEL);
      return zip;
    }
  }

  private void copy(InputStream sheet) throws XMLStreamException {
    XMLStreamReader xml = XMLInputFactory.newDefaultFactory().createXMLStreamReader(sheet);
    Row row = null;
    Cell cell = null;
    boolean shared = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
        fill(row);
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "row" -> row = to.createRow(Integer.parseInt(xml.getAttributeValue(null, "r")) - 1);
          case "c" -> {
            cell = row.createCell(new CellReference(xml.getAttributeValue(null, "r")).getCol());
            shared = "s".equals(xml.getAttributeValue(null, "t"));
          }
          case "v" -> put(cell, xml.getElementText(), shared);
          default -> {
            // The logs of this benchmark hold nothing else that would have to be kept.
          }
        }
      }
    }
  }

  private void put(Cell cell, String value, boolean shared) {
    if (shared) {
      cell.setCellValue(strings.getItemAt(Integer.parseInt(value)).getString());
    } else {
      cell.setCellValue(Double.parseDouble(value));
      if (cell.getColumnIndex() == KnownColumns.DATE) {
        cell.setCellStyle(date);
      }
    }
  }

  private void fill(Row row) {
    int column = KnownColumns.FIRST_NEW;
    if (row.getRowNum() == 0) {
      for (String header : KnownColumns.NEW_HEADERS) {
        row.createCell(column++).setCellValue(header);
      }
      return;
    }
    double[] filled =
        columns.fill(
            row.getCell(KnownColumns.BATCH).getStringCellValue(),
            row.getCell(KnownColumns.GRAVITY).getNumericCellValue(),
            row.getCell(KnownColumns.TEMPERATURE).getNumericCellValue());
    for (double number : filled) {
      row.createCell(column++).setCellValue(number);
    }
  }
}
