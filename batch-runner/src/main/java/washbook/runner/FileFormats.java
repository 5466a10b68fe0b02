package washbook.runner;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import washbook.log.language.Message;
import washbook.runner.chart.OdsChartWriter;
import washbook.runner.chart.XlsxChartWriter;
import washbook.runner.file.ReadFile;
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
              UnusableFileException.message("format.workbook"),
              List.of("xlsx", "xlsm"),
              true,
              new XlsxReader(),
              new XlsxWriter(),
              Optional.of(new XlsxChartWriter()),
              Optional.of(new PortableXlsx())),
          new FileFormat(
              UnusableFileException.message("format.ods"),
              List.of("ods"),
              true,
              new OdsReader(),
              new OdsWriter(),
              Optional.of(new OdsChartWriter()),
              Optional.of(new PortableOds())),
          new FileFormat(
              UnusableFileException.message("format.xls"),
              List.of("xls"),
              false,
              new XlsReader(),
              new XlsWriter(),
              Optional.empty(),
              Optional.empty()),
          new FileFormat(
              UnusableFileException.message("format.csv"),
              List.of("csv", "tsv"),
              false,
              new CsvReader(),
              new CsvWriter(),
              Optional.empty(),
              Optional.empty()));

  /** What files of other kinds are, by their extension, and how to get at their content. */
  private static final Set<String> OTHERS =
      Set.of("fods", "sxc", "uos", "numbers", "gsheet", "wk1", "wks", "123");

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
    if (OTHERS.contains(extension(file))) {
      throw UnusableFileException.of("kind.other", other(extension(file)));
    }
    String kind = contentKind(file);
    if (kind.equals(UNKNOWN)) {
      throw UnusableFileException.of("kind.none", names());
    }
    return byExtension(kind.equals(TEXT) ? extension(file) : kind)
        .filter(format -> !kind.equals(TEXT) || isTextFormat(format))
        .orElseThrow(() -> UnusableFileException.of("kind.none", names()));
  }

  private static final String TEXT = "text";
  private static final String UNKNOWN = "";

  /** The extension that stands for the content, TEXT, or UNKNOWN. */
  private static String contentKind(Path file) throws IOException {
    byte[] start;
    try (InputStream in = ReadFile.stream(file)) {
      start = in.readNBytes(4096);
    }
    if (starts(start, 'P', 'K', 3, 4)) {
      return holds(start, "application/vnd.oasis.opendocument.spreadsheet") ? "ods" : "xlsx";
    }
    if (starts(start, 0xD0, 0xCF, 0x11, 0xE0)) {
      if (contains(file, "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE))) {
        throw UnusableFileException.of("encrypted");
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
    try (InputStream in = ReadFile.stream(file)) {
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

  private static Message other(String extension) {
    return switch (extension) {
      case "wk1", "wks", "123" -> UnusableFileException.message("kind.old", extension);
      default -> UnusableFileException.message("kind." + extension);
    };
  }

  private static Message names() {
    return ALL.stream()
        .map(FileFormat::name)
        .reduce((before, last) -> UnusableFileException.message("list", before, last))
        .orElseThrow();
  }
}
