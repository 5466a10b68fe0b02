package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import washbook.functions.Numbers;
import washbook.log.Doubts;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.RowStatement;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.words.FeedWords;

/** Asks what was put into a wash, with the amounts that the log's own notes tell. */
final class FeedQuestions {
  private static final String EXAMPLE_KG = "1.5";
  private static final String EXAMPLE_L = "25";

  private final Grid grid;
  private final LogTable table;
  private final Doubts doubts;

  FeedQuestions(Grid grid, LogTable table, Doubts doubts) {
    this.grid = grid;
    this.table = table;
    this.doubts = doubts;
  }

  /**
   * What is asked about.
   *
   * @param batch its name
   * @param row the row that the answers are about, from 0
   * @param before row of the last reading before something was put in, -1 for none
   * @param after row of the first reading after it, -1 for none
   * @param volumeIsKnown whether the log states the volume
   * @param riseTells whether the two readings can tell how much
   */
  record Feed(
      String batch, int row, int before, int after, boolean volumeIsKnown, boolean riseTells) {}

  /**
   * Asks about readings that rise.
   *
   * @param cell of the reading
   * @param from the reading before, to be read
   * @param to the reading there, to be read
   */
  void askRise(Feed feed, String cell, Message from, Message to) {
    List<MapAnswer> answers = amounts(feed);
    answers.add(
        MapAnswer.of(RowStatement.batch(feed.row(), feed.batch() + " B"))
            .with(Message.of("answer.batchBegins")));
    answers.add(nothing(feed).with(Message.of("answer.nothingIn")));
    doubts.ask(
        cell,
        Message.of("ask.rise", cell, feed.batch(), from, to),
        answers.toArray(MapAnswer[]::new));
  }

  /** Asks how much was put in where a note tells that something was. */
  void askNote(Feed feed, String cell) {
    List<MapAnswer> answers = amounts(feed);
    answers.add(nothing(feed).with(Message.of("answer.otherMeaning")));
    doubts.ask(cell, Message.of("ask.noteAmount", cell), answers.toArray(MapAnswer[]::new));
  }

  /** Asks where a map wants the readings to tell how much, and they do not. */
  void askInsteadOfRise(Feed feed, String cell) {
    List<MapAnswer> answers =
        amounts(
            new Feed(
                feed.batch(),
                feed.row(),
                feed.before(),
                feed.after(),
                feed.volumeIsKnown(),
                false));
    answers.add(nothing(feed));
    doubts.ask(
        cell, Message.of("ask.riseNotTold", feed.row() + 1), answers.toArray(MapAnswer[]::new));
  }

  private static MapAnswer nothing(Feed feed) {
    return MapAnswer.of(RowStatement.sugar(feed.row(), "0"));
  }

  private List<MapAnswer> amounts(Feed feed) {
    List<MapAnswer> answers = new ArrayList<>();
    addByTheRise(feed, answers);
    OptionalDouble told = told(feed);
    List<String> lines = new ArrayList<>();
    lines.add(
        RowStatement.sugar(
            feed.row(), told.isPresent() ? Numbers.round(told.getAsDouble(), 4) : EXAMPLE_KG));
    if (!feed.volumeIsKnown()) {
      OptionalDouble litres = litres(feed);
      lines.add(
          "volume = "
              + (litres.isPresent() ? Numbers.round(litres.getAsDouble(), 3) : EXAMPLE_L)
              + " L");
    }
    boolean example = told.isEmpty() || !feed.volumeIsKnown();
    Message remark =
        told.isEmpty()
            ? Message.NONE
            : isHoney(feed)
                ? Message.of("answer.byHoney", new Figure("0.8"))
                : Message.of("answer.byNote");
    answers.add(new MapAnswer(lines, remark, example));
    return answers;
  }

  /** The sugar that the notes from the reading before to the reading after tell of, kg. */
  private OptionalDouble told(Feed feed) {
    List<Double> told = new ArrayList<>();
    for (String text : texts(feed)) {
      FeedWords.kilograms(text).ifPresent(told::add);
    }
    return told.size() == 1 ? OptionalDouble.of(told.get(0)) : OptionalDouble.empty();
  }

  /** Whether honey was put in. */
  boolean isHoney(Feed feed) {
    return texts(feed).stream().anyMatch(t -> FeedWords.in(t).contains(FeedWords.Meaning.HONEY));
  }

  /** The texts that may speak of what was put in between two readings. */
  private List<String> texts(Feed feed) {
    List<String> texts = new ArrayList<>();
    int first = feed.before() < 0 ? feed.row() : Math.min(feed.row(), feed.before());
    int last = Math.max(feed.row(), feed.after());
    for (int row = first; row <= last; row++) {
      boolean beforeThat = row == first && first != feed.row() && !saysFed(row);
      if (!beforeThat) {
        texts.addAll(texts(row));
      }
    }
    return texts;
  }

  /** Whether a note on a row, in whatever column, tells that sugar was put in. */
  boolean saysFed(int row) {
    return columnThatSaysFed(row) >= 0;
  }

  /** The column with a text of a row that tells that sugar was put in; -1 for none. */
  int columnThatSaysFed(int row) {
    for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
      if (isOwnText(row, column) && FeedWords.saysFed(grid.text(row, column))) {
        return column;
      }
    }
    return -1;
  }

  private List<String> texts(int row) {
    List<String> texts = new ArrayList<>();
    for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
      if (isOwnText(row, column)) {
        texts.add(grid.text(row, column));
      }
    }
    return texts;
  }

  /** Whether a cell holds a text of the log itself: what was written into it says of sugar too. */
  private boolean isOwnText(int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        && table.columns().stream()
            .noneMatch(use -> use.column() == column && use.role() == Role.COMPUTED);
  }

  /** The volume that the notes of the feed tell of, else what stands above or on the first row. */
  private OptionalDouble litres(Feed feed) {
    for (String text : texts(feed)) {
      OptionalDouble litres = FeedWords.litres(text);
      if (litres.isPresent()) {
        return litres;
      }
    }
    Set<Double> told = new TreeSet<>();
    for (int row = 0; row <= table.firstRow(); row++) {
      for (int column = 0; column < grid.columnCount(); column++) {
        if (grid.kind(row, column) == Grid.Kind.TEXT) {
          FeedWords.litres(grid.text(row, column)).ifPresent(told::add);
        }
      }
    }
    return told.size() == 1 ? OptionalDouble.of(told.iterator().next()) : OptionalDouble.empty();
  }

  /** Asks for the volume of a batch to which an amount was added; tells what is missing. */
  Message askVolume(Feed feed, String cell) {
    List<MapAnswer> answers = new ArrayList<>();
    answers.add(MapAnswer.like("volume = " + EXAMPLE_L + " L"));
    addByTheRise(feed, answers);
    doubts.ask(cell, Message.of("ask.volume", feed.batch()), answers.toArray(MapAnswer[]::new));
    return Message.of("why.volume", cell);
  }

  /** Asks for an amount that is not clear; tells what is missing. */
  Message askAmount(Feed feed, String cell, boolean isSugar) {
    List<MapAnswer> answers = new ArrayList<>();
    answers.add(
        MapAnswer.like(
            "column "
                + cell.replaceAll("\\d", "")
                + (isSugar ? " = SUGAR_ADDED in KG" : " = WATER_ADDED in L")));
    addByTheRise(feed, answers);
    doubts.ask(cell, Message.of("ask.amount"), answers.toArray(MapAnswer[]::new));
    return Message.of("why.amount", cell);
  }

  private static void addByTheRise(Feed feed, List<MapAnswer> answers) {
    if (feed.riseTells()) {
      answers.add(
          MapAnswer.of(RowStatement.sugarByTheRise(feed.row()))
              .with(Message.of("answer.littleFermented")));
    }
  }
}
