package washbook.runner;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import washbook.runner.chart.OdsChartWriter;
import washbook.runner.chart.XlsxChartWriter;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.CsvReader;
import washbook.runner.read.OdsReader;
import washbook.runner.read.XlsReader;
import washbook.runner.read.XlsxReader;
import washbook.runner.write.CsvWriter;
import washbook.runner.write.OdsWriter;
import washbook.runner.write.PortableOds;
import washbook.runner.write.PortableXlsx;
import washbook.runner.write.XlsWriter;
import washbook.runner.write.XlsxWriter;

/** The formats that can be worked on, and which of them a file is in. */
public final class FileFormats {
  private static final List<FileFormat> ALL =
      List.of(
          new FileFormat(
              "workbook (.xlsx, .xlsm)",
              List.of("xlsx", "xlsm"),
              true,
              new XlsxReader(),
              new XlsxWriter(),
              Optional.of(new XlsxChartWriter()),
              Optional.of(new PortableXlsx())),
          new FileFormat(
              "OpenDocument spreadsheet (.ods)",
              List.of("ods"),
              true,
              new OdsReader(),
              new OdsWriter(),
              Optional.of(new OdsChartWriter()),
              Optional.of(new PortableOds())),
          new FileFormat(
              "older workbook (.xls)",
              List.of("xls"),
              false,
              new XlsReader(),
              new XlsWriter(),
              Optional.empty(),
              Optional.empty()),
          new FileFormat(
              "text table (.csv, .tsv)",
              List.of("csv", "tsv"),
              false,
              new CsvReader(),
              new CsvWriter(),
              Optional.empty(),
              Optional.empty()));

  /** What files of other kinds are, by their extension, and how to get at their content. */
  private static final Map<String, String> OTHERS =
      Map.of(
          "fods", "a flat OpenDocument spreadsheet (.fods); save it as .ods",
          "sxc", "an older open spreadsheet (.sxc); save it as .ods",
          "uos", "an office document of another kind (.uos); save it as .ods",
          "numbers", "a spreadsheet package (.numbers); export it as .xlsx",
          "gsheet", "only a link to a sheet kept elsewhere (.gsheet); download it as .xlsx or .ods",
          "wk1", "a spreadsheet of an old kind (.wk1); save it as .xlsx or .ods",
          "wks", "a spreadsheet of an old kind (.wks); save it as .xlsx or .ods",
          "123", "a spreadsheet of an old kind (.123); save it as .xlsx or .ods");

  private FileFormats() {}

  public static List<FileFormat> all() {
    return ALL;
  }

  /** Whether the file's name ends like one of the formats; for walking folders. */
  public static boolean isNamedLikeOne(Path file) {
    return byExtension(extension(file)).isPresent();
  }

  /**
   * The format of a file: what its content says, and where that says nothing, its name.
   *
   * @throws UnusableFileException when it is in none of them
   */
  public static FileFormat of(Path file) throws IOException {
    String other = OTHERS.get(extension(file));
    if (other != null) {
      throw new UnusableFileException("The file is " + other + ".");
    }
    String kind = contentKind(file);
    if (kind.equals(UNKNOWN)) {
      throw new UnusableFileException("The file is none of " + names() + ".");
    }
    return byExtension(kind.equals(TEXT) ? extension(file) : kind)
        .filter(format -> !kind.equals(TEXT) || isTextFormat(format))
        .orElseThrow(() -> new UnusableFileException("The file is none of " + names() + "."));
  }

  private static final String TEXT = "text";
  private static final String UNKNOWN = "";

  /** The extension that stands for the content, TEXT, or UNKNOWN. */
  private static String contentKind(Path file) throws IOException {
    byte[] start;
    try (InputStream in = Files.newInputStream(file)) {
      start = in.readNBytes(4096);
    }
    if (starts(start, 'P', 'K', 3, 4)) {
      return holds(start, "application/vnd.oasis.opendocument.spreadsheet") ? "ods" : "xlsx";
    }
    if (starts(start, 0xD0, 0xCF, 0x11, 0xE0)) {
      if (contains(file, "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE))) {
        throw new UnusableFileException(
            "The workbook is encrypted; save a copy without a password first.");
      }
      return "xls";
    }
    // Worksheets older than the container start with a BIFF "beginning of file" record.
    if (starts(start, 0x09, 0x08) || starts(start, 0x09, 0x04) || starts(start, 0x09, 0x02)) {
      return "xls";
    }
    return isText(start) ? TEXT : UNKNOWN;
  }

  private static boolean isText(byte[] start) {
    if (starts(start, 0xFF, 0xFE) || starts(start, 0xFE, 0xFF)) {
      return true;
    }
    for (byte b : start) {
      if (b >= 0 && b < 32 && b != '\t' && b != '\n' && b != '\r' && b != '\f' && b != 0x1A) {
        return false;
      }
    }
    return true;
  }

  /** Whether these bytes are anywhere in the file. */
  private static boolean contains(Path file, byte[] sought) throws IOException {
    byte[] buffer = new byte[1 << 16];
    int kept = 0;
    try (InputStream in = Files.newInputStream(file)) {
      for (int got = in.read(buffer, 0, buffer.length);
          got > 0;
          got = in.read(buffer, kept, buffer.length - kept)) {
        int length = kept + got;
        for (int i = 0; i + sought.length <= length; i++) {
          if (Arrays.equals(buffer, i, i + sought.length, sought, 0, sought.length)) {
            return true;
          }
        }
        kept = Math.min(length, sought.length - 1);
        System.arraycopy(buffer, length - kept, buffer, 0, kept);
      }
    }
    return false;
  }

  private static boolean isTextFormat(FileFormat format) {
    return format.extensions().contains("csv");
  }

  private static boolean starts(byte[] bytes, int... expected) {
    if (bytes.length < expected.length) {
      return false;
    }
    for (int i = 0; i < expected.length; i++) {
      if ((bytes[i] & 0xFF) != expected[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean holds(byte[] bytes, String ascii) {
    return new String(bytes, StandardCharsets.ISO_8859_1).contains(ascii);
  }

  private static Optional<FileFormat> byExtension(String extension) {
    return ALL.stream().filter(format -> format.extensions().contains(extension)).findFirst();
  }

  private static String extension(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private static String names() {
    return String.join(", ", ALL.stream().map(FileFormat::name).toList());
  }
}
