package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import washbook.log.language.Language;
import washbook.log.understand.LogMap;
import washbook.runner.run.Failure;

/** The map that a person gives. */
final class MapArgument {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--map",
      paramLabel = "FILE",
      description =
          "A map that says what is where; 'washbook explain --write-map' makes one. Without it"
              + " NAME.map beside a log, else washbook.map in its folder, is used.")
  private Path map;

  private String text = "";
  private LogMap parsed = LogMap.none();

  /**
   * The map; one that says nothing where none is given.
   *
   * @param language in which is told what is wrong with it
   */
  LogMap read(Language language) {
    if (map == null) {
      return LogMap.none();
    }
    try {
      text = Files.readString(map);
      parsed = LogMap.parse(text);
      return parsed;
    } catch (IOException | IllegalArgumentException unusable) {
      throw WashbookCommand.Wrong.usage(
          spec, "usage.of", "--map " + map, Failure.reason(unusable, language));
    }
  }

  /** Sheets that the map speaks of. Ask after {@link #read}. */
  List<String> sheets() {
    return parsed.sheets();
  }

  /** The text that was read. */
  String text() {
    return text;
  }
}
