package washbook.log.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.log.Doubts;
import washbook.log.MapAnswer;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;

/** What is open about the columns of a table of jars, asked once it is known to be a run. */
final class RunQuestions {
  private final RunHeader header;
  private final Doubts doubts;
  private final List<Runnable> questions = new ArrayList<>();

  RunQuestions(RunHeader header, Doubts doubts) {
    this.header = header;
    this.doubts = doubts;
  }

  void open(RunHeader.Cell cell, Message question, List<MapAnswer> answers) {
    String at = CellAddress.of(header.bottomRow(), cell.column());
    questions.add(() -> doubts.ask(at, question, answers.toArray(MapAnswer[]::new)));
  }

  boolean isEmpty() {
    return questions.isEmpty();
  }

  void ask() {
    questions.forEach(Runnable::run);
  }

  /** A line of a map about a column. */
  static String statement(RunHeader.Cell cell, String use) {
    return statement(cell.column(), use);
  }

  static String statement(int column, String use) {
    return "column " + CellAddress.letters(column) + " = " + use;
  }

  /** One answer for each use that a column may have. */
  static List<MapAnswer> answers(RunHeader.Cell cell, String... uses) {
    return Arrays.stream(uses).map(use -> MapAnswer.of(statement(cell, use))).toList();
  }

  /** One answer for each column that may have a use. */
  static List<MapAnswer> answers(List<RunHeader.Cell> cells, String use) {
    return cells.stream().map(cell -> MapAnswer.of(statement(cell, use))).toList();
  }

  static Message letters(List<RunHeader.Cell> cells) {
    return cells.stream()
        .map(cell -> Message.of("plain", CellAddress.letters(cell.column())))
        .reduce((before, last) -> Message.of("either", before, last))
        .orElse(Message.NONE);
  }
}
