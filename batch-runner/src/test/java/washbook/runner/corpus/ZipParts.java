package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Compares zip archives entry by entry, read by a general library. */
public final class ZipParts {
  private ZipParts() {}

  /**
   * All entries must be there in the same order, and be equal in their compressed bytes, time,
   * comment and extra fields.
   *
   * @return the names of the entries whose compressed bytes differ
   */
  public static Set<String> changed(Path before, Path after) throws IOException {
    Set<String> changed = new TreeSet<>();
    try (ZipFile old = ZipFile.builder().setPath(before).get();
        ZipFile now = ZipFile.builder().setPath(after).get()) {
      List<ZipArchiveEntry> oldEntries = Collections.list(old.getEntriesInPhysicalOrder());
      List<ZipArchiveEntry> newEntries = Collections.list(now.getEntriesInPhysicalOrder());
      assertEquals(names(oldEntries), names(newEntries));
      assertEquals(
          names(Collections.list(old.getEntries())), names(Collections.list(now.getEntries())));
      for (int i = 0; i < oldEntries.size(); i++) {
        ZipArchiveEntry oldEntry = oldEntries.get(i);
        ZipArchiveEntry newEntry = newEntries.get(i);
        assertEquals(oldEntry.getTime(), newEntry.getTime(), oldEntry.getName());
        assertEquals(oldEntry.getComment(), newEntry.getComment(), oldEntry.getName());
        if (!Arrays.equals(raw(old, oldEntry), raw(now, newEntry))) {
          changed.add(oldEntry.getName());
        } else {
          assertEquals(oldEntry.getMethod(), newEntry.getMethod(), oldEntry.getName());
          assertArrayEquals(
              oldEntry.getCentralDirectoryExtra(),
              newEntry.getCentralDirectoryExtra(),
              oldEntry.getName());
          assertArrayEquals(
              oldEntry.getLocalFileDataExtra(),
              newEntry.getLocalFileDataExtra(),
              oldEntry.getName());
        }
      }
    }
    return changed;
  }

  /** The content of an entry. */
  public static byte[] content(Path file, String name) throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(file).get();
        InputStream in = zip.getInputStream(zip.getEntry(name))) {
      return in.readAllBytes();
    }
  }

  private static byte[] raw(ZipFile zip, ZipArchiveEntry entry) throws IOException {
    try (InputStream in = zip.getRawInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  private static List<String> names(List<ZipArchiveEntry> entries) {
    return entries.stream().map(ZipArchiveEntry::getName).toList();
  }
}
