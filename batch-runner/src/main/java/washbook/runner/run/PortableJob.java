package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;
import washbook.runner.FileFormat;
import washbook.runner.FileFormats;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.SourceFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.sheet.PortableResult;
import washbook.runner.sheet.PortableWriter;

/** Makes the pack formulas of one workbook portable, in a copy or in its place. */
public final class PortableJob {
  static final String MARK = ".portable";

  private PortableJob() {}

  /**
   * What was done.
   *
   * @param target the file that holds the result; null when none was written
   */
  public record Done(Path target, PortableResult result) {}

  /**
   * A copy NAME.portable.EXT unless in place; no file when no call can be replaced.
   *
   * @param to whether in place, with a backup, over a file that is no copy of ours
   */
  public static Done run(Path file, Destination to) throws IOException {
    if (!to.inPlace()) {
      return run(file, to, null);
    }
    try (SourceFile held = SourceFile.open(null, file)) {
      return run(file, to, held);
    }
  }

  private static Done run(Path file, Destination to, SourceFile held) throws IOException {
    FileStamp before = FileStamp.of(file);
    Object folder = FileIdentity.key(file.toAbsolutePath().getParent());
    FileFormat format = FileFormats.of(file);
    PortableWriter writer =
        format.portable().orElseThrow(() -> UnusableFileException.of("write.packOnly"));
    PortableResult result = writer.inspect(file);
    if (result.formulas() == 0) {
      return new Done(null, result);
    }
    Path target = to.inPlace() ? file : beside(file);
    if (to.inPlace() && held == null) {
      throw UnusableFileException.of("write.link", UnusableFileException.quoted(target));
    }
    Object key = held == null ? null : held.key();
    SafeReplace.put(
        new SafeReplace.Job(null, file, before, key, folder, target, to.backup()),
        path -> writer.write(file, path),
        path -> {
          checkReadable(file, path);
          check(writer.inspect(path), result);
          if (to.replacesOnlyOurs()) {
            ReadBack.checkReplaced(format, path, target, older -> writer.isEarlier(file, older));
          }
        });
    return new Done(target, result);
  }

  private static Path beside(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
    return file.resolveSibling(name.substring(0, dot) + MARK + name.substring(dot));
  }

  /** What no reader of ours opens is no workbook to write, whatever formulas were found in it. */
  private static void checkReadable(Path file, Path written) throws IOException {
    if (FileFormats.of(file).reader().read(written).isEmpty()) {
      throw UnusableFileException.of("damaged.sheets");
    }
  }

  private static void check(PortableResult rest, PortableResult result)
      throws UnusableFileException {
    if (rest.formulas() != 0 || rest.left().size() != result.left().size()) {
      throw UnusableFileException.of("readBack.portable");
    }
  }
}
