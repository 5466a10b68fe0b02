package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.language.Language;
import washbook.runner.FileFormats;
import washbook.runner.file.ToldFileException;
import washbook.runner.file.UnusableFileException;

/** What is wrong with a file is told to the last word in the language of whoever reads it. */
class FailureWordsTest {
  private static final Pattern ENGLISH =
      Pattern.compile("\\b(the|its|not|ends|damaged|directory|broken)\\b");

  @TempDir private Path folder;

  private String told(String file, byte[] bytes, Language language) throws IOException {
    Path there = folder.resolve(file);
    Files.write(there, bytes);
    IOException damaged =
        assertThrows(IOException.class, () -> FileFormats.of(there).reader().read(there));
    return Failure.reason(damaged, language);
  }

  private byte[] openDocument(String content) throws IOException {
    Path file = folder.resolve("made.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      byte[] kind =
          "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII);
      ZipEntry first = new ZipEntry("mimetype");
      CRC32 sum = new CRC32();
      sum.update(kind);
      first.setMethod(ZipEntry.STORED);
      first.setSize(kind.length);
      first.setCrc(sum.getValue());
      zip.putNextEntry(first);
      zip.write(kind);
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(content.getBytes(StandardCharsets.UTF_8));
    }
    return Files.readAllBytes(file);
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void theInsideOfADamagedFileIsToldInTheReadersLanguage(Language language) throws IOException {
    byte[] whole = openDocument("<office:document-content><office:body");
    byte[] cut = Arrays.copyOf(whole, whole.length / 2);
    for (String told :
        new String[] {told("a.ods", whole, language), told("b.ods", cut, language)}) {
      assertFalse(ENGLISH.matcher(told).find(), told);
      assertFalse(told.contains("{"), told);
    }
  }

  @Test
  void inEnglishItIsToldAsEver() throws IOException {
    byte[] whole = openDocument("<office:document-content><office:body");
    assertEquals(
        "The file is damaged: in content.xml, it ends early.", told("a.ods", whole, Language.EN));
    byte[] cut = Arrays.copyOf(whole, whole.length / 2);
    assertEquals("The file is damaged: its end is missing.", told("b.ods", cut, Language.EN));
    assertEquals("Die Datei ist beschädigt (das Ende fehlt).", told("c.ods", cut, Language.DE));
  }

  @Test
  void whatTheSystemSaysIsTranslatedAndWhatNobodyKnowsIsQuoted() {
    IOException full = new IOException("No space left on device");
    assertEquals("No space left on device.", Failure.reason(full));
    assertEquals(
        "Le système signale : plus d’espace sur le disque.", Failure.reason(full, Language.FR));
    assertEquals(
        "„a.xlsx“: der Dateiname ist zu lang.",
        Failure.reason(new FileSystemException("a.xlsx", null, "File name too long"), Language.DE));
    assertEquals(
        "Een fout van het programma of een bibliotheek: odd.",
        Failure.reason(new IllegalStateException("odd"), Language.NL));
    assertTrue(Failure.reason(new IOException(), Language.NL).startsWith("IOException"));
  }

  @Test
  void aWrappedFailureAndOneOfAnotherFileSayTheSame() {
    ToldFileException link =
        new ToldFileException(Path.of("a"), UnusableFileException.message("system.link"));
    assertEquals("'a': a link, which is not followed.", Failure.reason(link));
    assertEquals(
        "«a»: un enlace, que no se sigue.",
        Failure.reason(new UncheckedIOException(link), Language.ES));
    assertEquals(
        "'b': a link, which is not followed.", Failure.reason(Failure.of(link, Path.of("b"))));
  }
}
