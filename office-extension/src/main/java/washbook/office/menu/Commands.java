package washbook.office.menu;

import java.util.function.Supplier;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.StoppedException;
import washbook.office.dialog.Trouble;
import washbook.office.dialog.Windows;
import washbook.office.help.HelpPage;
import washbook.office.language.OfficeText;

/** The commands by name. None ends without a word to the user, whatever is thrown in it. */
final class Commands {
  private Commands() {}

  static Outcome run(Command command, Windows windows, Supplier<OpenSheet> sheet) {
    Outcome outcome;
    try {
      outcome = of(command, windows, sheet);
    } catch (Throwable trouble) {
      outcome = Outcome.failed(Trouble.of(trouble).in(windows.language()));
    }
    // Left alone, Java takes gigabytes before it collects its garbage, and keeps them.
    System.gc();
    return windows.say(outcome);
  }

  private static Outcome of(Command command, Windows windows, Supplier<OpenSheet> sheet) {
    return switch (command.name()) {
      case "fill" -> new MenuFill(sheet.get(), windows, command).run();
      case "audit" -> new MenuAudit(sheet.get(), windows.language()).run();
      case "charts" -> new MenuCharts(sheet.get(), windows.language()).run();
      case "portable" -> new MenuPortable(sheet.get(), windows).run();
      case "recalculate" -> new MenuRecalculate(sheet.get(), windows.language()).run();
      case "explain" -> new MenuExplain(sheet.get(), windows.language()).run();
      case "help" -> help(windows);
      default ->
          Outcome.failed(OfficeText.of("command.unknown", command.name()).in(windows.language()));
    };
  }

  /** Nobody sees what a browser does with the page, so the user reads where it stands. */
  private static Outcome help(Windows windows) {
    HelpPage page =
        HelpPage.of(windows.context(), windows.language())
            .orElseThrow(() -> new StoppedException("help.missing"));
    if (!windows.shown()) {
      return Outcome.done(said("help.place", page, windows));
    }
    return page.isTaken(windows.context())
        ? Outcome.done(said("help.opened", page, windows))
        : Outcome.failed(said("help.notOpened", page, windows));
  }

  /** The office cuts off what follows a long word, as a path is, so that it gets lines here. */
  private static String said(String key, HelpPage page, Windows windows) {
    String path = ("\n" + page.file()).replaceAll("(.{30,60}/)", "$1\n");
    return OfficeText.of(key, path).in(windows.language());
  }
}
