package washbook.runner.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import washbook.runner.FileFormats;
import washbook.runner.read.UnusableFileException;
import washbook.runner.write.PortableOds;
import washbook.runner.write.PortableResult;
import washbook.runner.write.PortableXlsx;

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

  /** A copy NAME.portable.EXT unless {@code inPlace}; no file when no call can be replaced. */
  public static Done run(Path file, boolean inPlace, boolean backup) throws IOException {
    FileStamp before = FileStamp.of(file);
    PortableResult result = inspect(file);
    if (result.formulas() == 0) {
      return new Done(null, result);
    }
    Path target = inPlace ? file : beside(file);
    SafeReplace.put(
        file, before, target, backup, path -> write(file, path), path -> check(file, path, result));
    return new Done(target, result);
  }

  private static Path beside(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return file.resolveSibling(name.substring(0, dot) + MARK + name.substring(dot));
  }

  private static String extension(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.substring(name.lastIndexOf('.') + 1);
  }

  private static PortableResult inspect(Path file) throws IOException {
    return switch (extension(file)) {
      case "xlsx", "xlsm" -> PortableXlsx.inspect(file);
      case "ods" -> PortableOds.inspect(file);
      default ->
          throw new UnusableFileException(
              "Only .xlsx, .xlsm and .ods files can hold formulas of the pack.");
    };
  }

  private static void write(Path file, Path target) throws IOException {
    if (extension(file).equals("ods")) {
      PortableOds.write(file, target);
    } else {
      PortableXlsx.write(file, target);
    }
  }

  /** What no reader of ours opens is no workbook to write, whatever formulas were found in it. */
  private static void check(Path file, Path written, PortableResult result) throws IOException {
    if (FileFormats.of(file).reader().read(written).isEmpty()) {
      throw new UnusableFileException("The file is damaged: it has no sheets.");
    }
    PortableResult rest =
        extension(file).equals("ods")
            ? PortableOds.inspect(written)
            : PortableXlsx.inspect(written);
    if (rest.formulas() != 0 || rest.left().size() != result.left().size()) {
      throw new UnusableFileException("Read back, the result is not what was written.");
    }
  }
}
