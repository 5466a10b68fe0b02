package washbook.runner.report;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.WrittenFile;

/** A text file that appears under its name only when it is finished. */
final class PendingFile implements Closeable {
  private final ReportPlace place;
  private final UnfinishedFile pending;
  private final Writer writer;

  PendingFile(ReportPlace place) throws IOException {
    this.place = place;
    pending = UnfinishedFile.beside(place.file());
    writer = opened(pending);
  }

  private static Writer opened(UnfinishedFile pending) throws IOException {
    try {
      return new BufferedWriter(
          new OutputStreamWriter(
              WrittenFile.stream(pending.path()), StandardCharsets.UTF_8.newEncoder()));
    } catch (IOException | RuntimeException failure) {
      pending.close();
      throw failure;
    }
  }

  /** The parts of one file; where one cannot be made none is left. */
  static List<PendingFile> several(ReportPlace place, int count) throws IOException {
    List<PendingFile> made = new ArrayList<>();
    try {
      while (made.size() < count) {
        made.add(new PendingFile(place));
      }
      return List.copyOf(made);
    } catch (IOException | RuntimeException failure) {
      closeAll(made);
      throw failure;
    }
  }

  Writer writer() {
    return writer;
  }

  /** Ends the writing and opens what was written, for a file that is part of another. */
  Reader reread() throws IOException {
    writer.close();
    return new BufferedReader(
        new InputStreamReader(
            ReadFile.stream(pending.path()), StandardCharsets.UTF_8.newDecoder()));
  }

  void finish() throws IOException {
    writer.close();
    pending.permit(place.readers(), false);
    pending.force();
    place.check();
    pending.place();
    pending.forceFolder();
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
    try (pending) {
      writer.close();
    }
  }
}
