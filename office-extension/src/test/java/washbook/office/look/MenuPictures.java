package washbook.office.look;

import com.sun.star.awt.PosSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;
import washbook.office.testing.Book;
import washbook.office.testing.Dialogs;
import washbook.office.testing.Office;

/**
 * Takes pictures of the toolbar and of the windows of every command, as the office shows them on
 * the display that DISPLAY names. Commands run on the office's main thread, as those of a user do:
 * offices from 25.2 on end where another thread opens a window.
 */
public final class MenuPictures {
  /** What the office's own button says. */
  private static final Map<Language, String> CANCEL =
      Map.of(Language.EN, "Cancel", Language.DE, "Abbrechen", Language.FR, "Annuler");

  private final Office office;
  private final Dialogs dialogs;
  private final Language language;
  private final Path folder;

  private MenuPictures(Office office, Language language, Path folder) {
    this.office = office;
    this.dialogs = new Dialogs(office);
    this.language = language;
    this.folder = folder;
  }

  /** Takes the packed extension, a folder, en, de or fr, and width and height of the screen. */
  public static void main(String[] arguments) throws Exception {
    Path profile = Office.freshProfile();
    try (Office first = Office.on(profile)) {
      first.extensions().add(Path.of(arguments[0]));
    }
    Language language = Language.of(arguments[2]).orElseThrow();
    settings(profile, language);
    Path folder = Files.createDirectories(Path.of(arguments[1]));
    try (Office office = Office.withWindows(profile)) {
      MenuPictures pictures = new MenuPictures(office, language, folder);
      try {
        pictures.take(Integer.parseInt(arguments[3]), Integer.parseInt(arguments[4]));
      } catch (IllegalStateException missing) {
        pictures.picture("missing");
        throw missing;
      }
    } finally {
      Office.delete(profile);
    }
    System.exit(0);
  }

  private static void settings(Path profile, Language language) throws IOException {
    Path file = profile.resolve("user/registrymodifications.xcu");
    String settings =
        item("Setup/L10N", "ooLocale", language.code())
            + item("Office.Linguistic/General", "UILocale", language.code())
            + item("Office.Common/Misc", "FirstRun", "false")
            + item("Office.Common/Misc", "ShowTipOfTheDay", "false");
    String text = Files.readString(file);
    Files.writeString(file, text.replace("</oor:items>", settings + "</oor:items>"));
  }

  private static String item(String path, String name, String value) {
    return "<item oor:path=\"/org.openoffice."
        + path
        + "\"><prop oor:name=\""
        + name
        + "\" oor:op=\"fuse\"><value>"
        + value
        + "</value></prop></item>";
  }

  private void take(int width, int height) throws Exception {
    Book book = office.visibleBook();
    book.frame().getContainerWindow().setPosSize(0, 0, width, height, PosSize.POSSIZE);
    book.data(
        "A1:D6",
        new Object[][] {
          {"Plum wine, fermentation", "", "", ""},
          {"Day", "Reading", "Temp °C", "Alcohol"},
          {0.0, 20.5, 20.0, 0.0},
          {3.0, 14.0, 24.0, 4.1},
          {6.0, 9.0, 21.0, ""},
          {9.0, 6.0, 21.0, 9.0}
        });
    picture("window");
    CompletableFuture<Void> command = start(book, "fill");
    dialogs.awaitText("B2");
    picture("question");
    dialogs.press("column B = REFRACTOMETER in BRIX");
    dialogs.press(label("dialog.take"));
    dialogs.awaitText(label("dialog.ticks"));
    picture("fill");
    dialogs.press(label("dialog.fill"));
    ended(command, "filled", "OK");
    ended(start(book, "audit"), "audit", "OK");
    ended(start(book, "charts"), "charts", "OK");
    picture("charts-drawn");
    book.formula("N2", "=WASHBOOK.ABV(1.085;1.3)").formula("N3", "=WASHBOOK.ABV(1.085;1.02)");
    book.show();
    book.select("N2");
    ended(start(book, "explain"), "explain", "OK");
    ended(start(book, "portable"), "portable", CANCEL.get(language));
    ended(start(book, "recalculate"), "recalculate", "OK");
    ended(start(book, "help"), "help", "OK");
    book.close();
  }

  private CompletableFuture<Void> start(Book book, String command) {
    return CompletableFuture.runAsync(
        () -> office.onMainThread(() -> book.dispatch("washbook.office:" + command)));
  }

  private void ended(CompletableFuture<Void> command, String picture, String button)
      throws Exception {
    dialogs.awaitText(button);
    picture(picture);
    dialogs.press(button);
    command.get(1, TimeUnit.MINUTES);
  }

  private String label(String key) {
    return OfficeText.of(key).in(language).replace("~", "");
  }

  /** Gives the office time to draw; there is nothing to wait for. */
  private void picture(String name) throws Exception {
    TimeUnit.MILLISECONDS.sleep(2500);
    new ProcessBuilder("import", "-window", "root", folder.resolve(name + ".png").toString())
        .inheritIO()
        .start()
        .waitFor();
    System.out.println(name);
  }
}
