package washbook.runner.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import washbook.runner.file.TempName;

/** A text file that appears under its name only when it is finished. */
final class PendingFile implements Closeable {
  private final Path target;
  private final Path pending;
  private final Writer writer;

  PendingFile(Path target) throws IOException {
    this.target = target.toAbsolutePath();
    pending = TempName.beside(target);
    writer = Files.newBufferedWriter(pending);
  }

  Writer writer() {
    return writer;
  }

  /** Ends the writing and opens what was written, for a file that is part of another. */
  Reader reread() throws IOException {
    writer.close();
    return Files.newBufferedReader(pending);
  }

  void finish() throws IOException {
    writer.close();
    try (FileChannel channel = FileChannel.open(pending, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
    Files.move(pending, target, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Closes all of them, also when one cannot be. */
  static void closeAll(List<PendingFile> files) throws IOException {
    IOException first = null;
    for (PendingFile file : files) {
      try {
        file.close();
      } catch (IOException failure) {
        first = first == null ? failure : first;
      }
    }
    if (first != null) {
      throw first;
    }
  }

  @Override
  public void close() throws IOException {
    try {
      writer.close();
    } finally {
      Files.deleteIfExists(pending);
    }
  }
}
