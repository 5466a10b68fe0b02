package washbook.runner.archive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Date;
import java.util.Random;
import org.apache.commons.compress.archivers.zip.X5455_ExtendedTimestamp;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ArchiveCopyTest {
  @TempDir private Path folder;

  private static byte[] noise(int length) {
    byte[] bytes = new byte[length];
    Random random = new Random(length);
    for (int i = 0; i < length; i++) {
      bytes[i] = (byte) ('a' + random.nextInt(9));
    }
    return bytes;
  }

  /** Streamed, so every entry has a descriptor behind its data. */
  private Path archive(Zip64Mode mode) throws Exception {
    Path file = folder.resolve("old.zip");
    try (OutputStream out = Files.newOutputStream(file);
        ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
      zip.setUseZip64(mode);
      zip.setComment("kept in the cellar");
      for (int i = 0; i < 5; i++) {
        ZipArchiveEntry entry = new ZipArchiveEntry("part \u00E9" + i + ".xml");
        entry.setTime(1_760_000_000_000L + i * 86_400_000L);
        entry.setComment("comment " + i);
        X5455_ExtendedTimestamp stamp = new X5455_ExtendedTimestamp();
        stamp.setModifyJavaTime(new Date(1_760_000_000_000L));
        entry.addExtraField(stamp);
        zip.putArchiveEntry(entry);
        zip.write(noise(1000 * i));
        zip.closeArchiveEntry();
      }
    }
    return file;
  }

  @ParameterizedTest
  @EnumSource(
      value = Zip64Mode.class,
      names = {"Always", "Never"})
  void onlyTheChangedEntryDiffers(Zip64Mode mode) throws Exception {
    Path old = archive(mode);
    byte[] now = noise(3_000_000);
    Path target = folder.resolve("new.zip");
    try (Archive archive = Archive.open(old);
        ArchiveCopy copy = new ArchiveCopy(old, archive)) {
      Part part = archive.find("/PART \u00E92.xml").orElseThrow();
      assertTrue(
          copy.change(
              part,
              (in, to) -> {
                byte[] before = in.readAllBytes();
                assertArrayEquals(noise(2000), before);
                to.same(700);
                to.write(now);
              }));
      copy.leaveOut(archive.find("part \u00E94.xml").orElseThrow());
      copy.write(target);
    }
    byte[] expected = new byte[700 + now.length];
    System.arraycopy(noise(2000), 0, expected, 0, 700);
    System.arraycopy(now, 0, expected, 700, now.length);
    try (ZipFile before = ZipFile.builder().setPath(old).get();
        ZipFile after = ZipFile.builder().setPath(target).get()) {
      int entries = 0;
      for (ZipArchiveEntry entry : Collections.list(after.getEntriesInPhysicalOrder())) {
        String name = "part \u00E9" + entries + ".xml";
        assertEquals(name, entry.getName());
        ZipArchiveEntry other = before.getEntry(name);
        assertEquals(other.getTime(), entry.getTime());
        assertEquals("comment " + entries, entry.getComment());
        try (InputStream in = after.getInputStream(entry)) {
          assertArrayEquals(entries == 2 ? expected : noise(1000 * entries), in.readAllBytes());
        }
        if (entries != 2) {
          // In the wide form this field holds the entry's place, which moves.
          if (mode == Zip64Mode.Never) {
            assertArrayEquals(
                other.getCentralDirectoryExtra(), entry.getCentralDirectoryExtra(), name);
          }
          assertArrayEquals(other.getLocalFileDataExtra(), entry.getLocalFileDataExtra(), name);
        }
        entries++;
      }
      assertEquals(4, entries);
    }
    String end = new String(Files.readAllBytes(target), StandardCharsets.ISO_8859_1);
    assertTrue(end.endsWith("kept in the cellar"));
    try (java.util.zip.ZipFile strict = new java.util.zip.ZipFile(target.toFile())) {
      assertEquals(4, strict.size());
    }
  }

  @Test
  void sameContentGivesTheSameFile() throws Exception {
    Path old = archive(Zip64Mode.Always);
    Path target = folder.resolve("new.zip");
    try (Archive archive = Archive.open(old);
        ArchiveCopy copy = new ArchiveCopy(old, archive)) {
      assertFalse(
          copy.change(archive.parts().get(3), (in, to) -> to.same(in.readAllBytes().length)));
      copy.write(target);
    }
    assertArrayEquals(Files.readAllBytes(old), Files.readAllBytes(target));
  }
}
