package washbook.samples.corpus;

import java.util.ArrayList;
import java.util.List;

/** One log of the corpus: its pages, how it is stored, and what is to be understood of it. */
final class Log {
  private final String id;
  private final String about;
  private String extension;
  private Dialect dialect = Dialect.COMMA;
  private Expected.Verdict verdict = Expected.Verdict.FILL;
  private List<String> causes = List.of();
  private final List<Page> pages = new ArrayList<>();
  private final List<Sheetful> tables = new ArrayList<>();

  /** The id is the file's name with its extension, as {@code 01-tidy.xlsx}. */
  Log(String fileName, String about) {
    int point = fileName.lastIndexOf('.');
    this.id = fileName.substring(0, point);
    this.extension = fileName.substring(point + 1);
    this.about = about;
  }

  Page page(String name) {
    Page page = new Page(name);
    pages.add(page);
    return page;
  }

  /** A table of readings whose header row starts at that place. */
  Sheetful table(Page page, int headerRow, int firstColumn) {
    Sheetful table = new Sheetful(page, headerRow, firstColumn);
    tables.add(table);
    return table;
  }

  Log as(Dialect how) {
    dialect = how;
    return this;
  }

  Log verdict(Expected.Verdict what) {
    verdict = what;
    return this;
  }

  /** What an audit may name as the cause. */
  Log causes(String... names) {
    causes = List.of(names);
    return this;
  }

  String fileName() {
    return id + "." + extension;
  }

  String extension() {
    return extension;
  }

  Dialect dialect() {
    return dialect;
  }

  List<Page> pages() {
    return pages;
  }

  Expected expected() {
    return new Expected(
        verdict,
        about,
        verdict == Expected.Verdict.FILL || verdict == Expected.Verdict.CAREFUL
            ? tables.stream().map(Sheetful::expected).toList()
            : List.of(),
        causes);
  }
}
