package washbook.functions.portable.form;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FitDigestTest {
  @TempDir private Path folder;
  private Path classes;
  private Path model;
  private Path fitted;
  private Path note;
  private FitDigest digest;

  @BeforeEach
  void compiledAndFitted() throws IOException {
    classes = Files.createDirectories(folder.resolve("classes"));
    model = Files.writeString(classes.resolve("Model.class"), "density");
    fitted = Files.writeString(classes.resolve("fitted.txt"), "terms");
    note = folder.resolve("note");
    digest = new FitDigest(classes, fitted);
    digest.keep(note);
  }

  @Test
  void theSameClassesAndFormulasNeedNoFit() throws IOException {
    assertTrue(digest.isKeptIn(note));
  }

  @Test
  void anotherModelNeedsAFit() throws IOException {
    Files.writeString(model, "another");
    assertFalse(digest.isKeptIn(note));
  }

  @Test
  void aClassMoreOrLessNeedsAFit() throws IOException {
    Path more = Files.writeString(classes.resolve("More.class"), "more");
    assertFalse(digest.isKeptIn(note));
    Files.delete(more);
    assertTrue(digest.isKeptIn(note));
    Files.delete(model);
    assertFalse(digest.isKeptIn(note));
  }

  @Test
  void changedOrMissingFormulasNeedAFit() throws IOException {
    Files.writeString(fitted, "changed by hand");
    assertFalse(digest.isKeptIn(note));
    Files.delete(fitted);
    assertFalse(digest.isKeptIn(note));
  }

  @Test
  void withoutANoteAFitIsNeeded() throws IOException {
    Files.delete(note);
    assertFalse(digest.isKeptIn(note));
  }
}
