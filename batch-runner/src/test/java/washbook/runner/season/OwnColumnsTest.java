package washbook.runner.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import washbook.log.language.Language;
import washbook.runner.file.UnusableFileException;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.Texts;

/** An older table keeps its order of columns: formulas of the person's go by where they stand. */
class OwnColumnsTest {
  private static final List<OverviewColumn> EARLIER = List.of(OverviewColumn.values());

  @Test
  void anOrderOfAllOurColumnsIsKept() throws Exception {
    assertEquals(Optional.of(EARLIER), order(heads(EARLIER)));
    assertEquals(Optional.of(SeasonPage.COLUMNS), order(heads(SeasonPage.COLUMNS)));
    List<String> withOwn = heads(EARLIER);
    withOwn.add("Taste");
    assertEquals(Optional.of(EARLIER), order(withOwn));
  }

  @Test
  void columnsAmongOursOrTooFewOfThemHaveNoOrder() throws Exception {
    List<OverviewColumn> fewer = new ArrayList<>(EARLIER);
    fewer.remove(OverviewColumn.REFUSED);
    List<String> among = heads(EARLIER);
    among.add(2, "Taste");
    assertEquals(Optional.empty(), order(among));
    assertEquals(Optional.empty(), order(heads(fewer)));
    assertEquals(Optional.empty(), OwnColumns.none().order());
  }

  private static List<String> heads(List<OverviewColumn> columns) {
    Wording words = new Wording(Language.EN);
    return new ArrayList<>(columns.stream().map(column -> column.head(words)).toList());
  }

  private static Optional<List<OverviewColumn>> order(List<String> heads)
      throws UnusableFileException {
    CompactGrid grid = new CompactGrid("Season", new Texts());
    for (int column = 0; column < heads.size(); column++) {
      grid.putText(3, column, heads.get(column), false);
    }
    return OwnColumns.of(grid, OverviewColumn::head).order();
  }
}
