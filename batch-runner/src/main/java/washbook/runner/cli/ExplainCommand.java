package washbook.runner.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.FileFormats;
import washbook.runner.ask.Asking;
import washbook.runner.ask.MapBeside;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.FileMode;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.WrittenFile;
import washbook.runner.language.LanguageArgument;
import washbook.runner.language.Wording;
import washbook.runner.run.Failure;

/** {@code washbook explain}: what was understood of a log. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = {
      "Shows what a log was taken for: its tables, what each column holds and in which unit, its"
          + " batches with their original gravity, and what it leaves open.",
      "Nothing in the log is changed."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook explain Plum.xlsx",
      "  washbook explain Plum.xlsx --ask",
      "  washbook explain Plum.xlsx --write-map plum.map",
      "  washbook explain Plum.xlsx --map plum.map"
    })
final class ExplainCommand implements Callable<Integer> {
  @ParentCommand private WashbookCommand parent;
  @Mixin private MapArgument map;
  @Mixin private LanguageArgument language;

  @Option(
      names = "--write-map",
      paramLabel = "FILE",
      description = "Write what was understood into a new file, as a map to edit.")
  private Path writeMap;

  @Option(
      names = "--ask",
      description =
          "Ask here what the log leaves open, and write the answers as a map: into NAME.map beside"
              + " the log, which is used from then on, or into the file of --write-map.")
  private boolean ask;

  @Parameters(paramLabel = "FILE", description = "The log.")
  private Path file;

  /** The folder of the map, which may be swapped for another while the log is read. */
  private Object meant;

  private Object folder() {
    Path map = writeMap == null ? MapBeside.own(file) : writeMap;
    return FileIdentity.key(map.toAbsolutePath().getParent());
  }

  /** A new file, whole or not at all, for those who may read the log. */
  private void write(Path target, String text) throws IOException {
    try (UnfinishedFile unfinished = UnfinishedFile.beside(target)) {
      unfinished.checkFolder(meant);
      try (OutputStream out = WrittenFile.stream(unfinished.path())) {
        out.write(text.getBytes(StandardCharsets.UTF_8));
      }
      unfinished.permit(FileMode.forAll(List.of(file)), false);
      unfinished.force();
      unfinished.placeAs(target);
      unfinished.forceFolder();
    }
  }

  private int ask(LogMap before) throws IOException {
    Path answers = writeMap == null ? MapBeside.own(file) : writeMap;
    if (Files.exists(answers, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(answers.toString());
    }
    List<Grid> sheets = new ArrayList<>();
    FileFormats.of(file).reader().read(file).forEach(sheets::add);
    LogMap map =
        new Asking(
                new BufferedReader(new InputStreamReader(System.in, Terminal.charset())),
                parent.out(),
                language.wording())
            .ask(sheets, before);
    if (map.equals(before)) {
      parent.out().println(language.wording().say("explain.nothing"));
    } else {
      write(answers, map.print(language.wording().language()));
      parent.out().println(language.wording().say("explain.wrote", answers));
    }
    boolean open =
        sheets.stream()
            .anyMatch(sheet -> !SheetUnderstanding.understand(sheet, map).doubts().isEmpty());
    return open ? ExitCode.REFUSED : ExitCode.DONE;
  }

  @Override
  public Integer call() {
    Wording words = language.wording();
    LogMap named = map.read(words.language());
    PrintStream out = parent.out();
    List<Understanding> sheets = new ArrayList<>();
    try {
      meant = folder();
      MapBeside beside = MapBeside.of(file, named);
      if (beside.isKept()) {
        out.println(words.say("explain.map.inside", beside.name()));
        out.println();
      } else if (beside.file() != null) {
        out.println(words.say("explain.map", beside.file()));
        out.println();
      }
      if (ask) {
        return ask(beside.map());
      }
      Explanation explanation = new Explanation(out, words.language());
      for (Grid grid : FileFormats.of(file).reader().read(file)) {
        Understanding understanding = SheetUnderstanding.understand(grid, beside.map());
        sheets.add(understanding);
        explanation.print(
            understanding, LogFiller.fill(grid, understanding, FillOptions.usual()).accounts());
      }
      if (writeMap != null) {
        write(writeMap, LogMap.write(sheets, words.language()));
        out.println(words.say("explain.wrote", writeMap));
      }
    } catch (FileAlreadyExistsException exists) {
      parent.err().println(words.say("explain.exists", String.valueOf(exists.getMessage())));
      return ExitCode.FILE;
    } catch (IOException | RuntimeException failure) {
      parent.err().println(file + ": " + Failure.reason(failure, words.language()));
      return ExitCode.FILE;
    }
    if (sheets.stream().anyMatch(sheet -> !sheet.doubts().isEmpty())) {
      return ExitCode.REFUSED;
    }
    if (sheets.stream().allMatch(Understanding::isEmpty)) {
      out.println(words.say("explain.none", file));
      return ExitCode.NOTHING_RECOGNISED;
    }
    return ExitCode.DONE;
  }
}
