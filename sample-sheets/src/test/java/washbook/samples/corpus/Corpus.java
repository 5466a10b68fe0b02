package washbook.samples.corpus;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import washbook.samples.Office;

/**
 * The invented logs of the corpus. Run {@code main} with the folder {@code
 * src/test/resources/corpus} to write the files and the expected understanding beside each; the
 * .ods files are made by the office from .xlsx ones.
 */
public final class Corpus {
  private Corpus() {}

  static List<Log> logs() {
    List<Log> logs = new ArrayList<>();
    logs.addAll(PlainLogs.all());
    logs.addAll(DirtyLogs.all());
    logs.addAll(LayoutLogs.all());
    logs.addAll(StatedLogs.all());
    logs.addAll(ScaleLogs.all());
    logs.addAll(LanguageLogs.all());
    logs.addAll(SouthernLogs.all());
    logs.addAll(AuditLogs.all());
    logs.addAll(Traps.all());
    return logs;
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    write(Path.of(arguments[0]));
  }

  static void write(Path folder) throws IOException, InterruptedException {
    Files.createDirectories(folder);
    Path forOffice = Files.createTempDirectory("corpus");
    for (Log log : logs()) {
      Path file = folder.resolve(log.fileName());
      switch (log.extension()) {
        case "xlsx", "xls" -> PoiFiles.write(log, file);
        case "csv", "tsv" -> TextFiles.write(log, file);
        case "ods" ->
            PoiFiles.write(log, forOffice.resolve(log.fileName().replace(".ods", ".xlsx")));
        default -> throw new IOException("no writer for " + log.fileName());
      }
      ExpectedFile.write(log.expected(), folder.resolve(log.fileName() + ".expected"));
    }
    try (Stream<Path> files = Files.list(forOffice)) {
      Office.convert(files.sorted().toList(), "ods", folder);
    }
  }
}
