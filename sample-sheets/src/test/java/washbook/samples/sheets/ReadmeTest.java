package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import washbook.functions.SafetyNote;

/** What the README shows is what the program prints, and what it names is there. */
class ReadmeTest {
  private static final Path TOP = Path.of("..");
  private static final String CALC = "$ washbook calc ";

  @Test
  void everyFigureIsAsCalcPrintsIt() throws IOException, InterruptedException {
    List<String> lines = new ArrayList<>();
    for (String page : List.of("README.md", "functions/MATHS.md")) {
      lines.addAll(Files.readAllLines(TOP.resolve(page)));
    }
    int figures = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(CALC)) {
        Object[] words = ("calc " + lines.get(i).substring(CALC.length())).split(" ");
        assertEquals(lines.get(i + 1), Washbook.run(words).output().strip(), lines.get(i));
        figures++;
      }
    }
    assertEquals(20, figures);
  }

  @Test
  void filesThatItNamesAreThere() throws IOException {
    String text = Files.readString(TOP.resolve("README.md"));
    Matcher named = Pattern.compile("sample-sheets/[-a-z0-9/]+(\\.[a-z]+)?").matcher(text);
    int found = 0;
    while (named.find()) {
      assertTrue(Files.exists(TOP.resolve(named.group())), named.group());
      found++;
    }
    assertTrue(found >= 6, found + " files");
  }

  /** Taken again by .ci/pictures, part readme, when this fails. */
  @Test
  void thePicturesShowTheSheetsAsTheyAre() throws IOException {
    Path folder = Path.of(".");
    assertEquals(Picture.source(folder), Files.readString(folder.resolve("pictures.source.txt")));
  }

  /** Of README and of the pages that it leads to. */
  @Test
  void linksLeadToWhatIsThere() throws IOException {
    Pattern link = Pattern.compile("\\]\\(([^)#:]+)\\)");
    List<Path> pages = new ArrayList<>(List.of(TOP.resolve("README.md")));
    for (int i = 0; i < pages.size(); i++) {
      Matcher found = link.matcher(Files.readString(pages.get(i)));
      while (found.find()) {
        Path to = pages.get(i).resolveSibling(found.group(1)).normalize();
        assertTrue(Files.exists(to), pages.get(i) + " leads to " + to);
        if (i == 0 && to.toString().endsWith(".md")) {
          pages.add(to);
        }
      }
    }
    assertTrue(pages.size() > 8, pages + "");
  }

  @Test
  void theSafetyNoteStandsInIt() throws IOException {
    String text = Files.readString(TOP.resolve("README.md")).replaceAll("\\s+", " ");
    for (String line : SafetyNote.LINES) {
      String whole = text.replace(" - ", " ");
      assertTrue(whole.contains(line), line);
    }
  }
}
