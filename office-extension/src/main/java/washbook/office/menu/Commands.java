package washbook.office.menu;

import java.util.function.Supplier;
import washbook.office.language.OfficeText;

/** The commands by name. None ends without a word to the user, whatever is thrown in it. */
final class Commands {
  private Commands() {}

  static Outcome run(Command command, Windows windows, Supplier<OpenSheet> sheet) {
    Outcome outcome;
    try {
      outcome = of(command, windows, sheet.get());
    } catch (Throwable trouble) {
      outcome = Outcome.failed(Trouble.of(trouble).in(windows.language()));
    }
    return windows.say(outcome);
  }

  private static Outcome of(Command command, Windows windows, OpenSheet sheet) {
    return switch (command.name()) {
      case "fill" -> new MenuFill(sheet, windows, command).run();
      case "portable" -> new MenuPortable(sheet, windows).run();
      case "recalculate" -> new MenuRecalculate(sheet, windows.language()).run();
      case "explain" -> new MenuExplain(sheet, windows.language()).run();
      default ->
          Outcome.failed(OfficeText.of("command.unknown", command.name()).in(windows.language()));
    };
  }
}
