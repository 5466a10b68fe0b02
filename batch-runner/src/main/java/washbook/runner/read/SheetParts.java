package washbook.runner.read;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;

/** The parts of a package that belong to one sheet alone: its drawings and their charts. */
public final class SheetParts {
  private static final Set<String> OWN =
      Set.of(
          "drawing",
          "chart",
          "chartStyle",
          "chartColorStyle",
          "chartUserShapes",
          "themeOverride",
          "vmlDrawing",
          "comments",
          "printerSettings");

  private SheetParts() {}

  /** The sheet's part, what only it leads to, and their relationships. */
  public static Set<Part> of(Archive archive, Part sheet) throws IOException {
    Set<Part> found = new LinkedHashSet<>();
    Deque<Part> open = new ArrayDeque<>();
    open.add(sheet);
    while (!open.isEmpty()) {
      Part part = open.remove();
      if (!found.add(part)) {
        continue;
      }
      int slash = part.name().lastIndexOf('/');
      archive
          .find(
              part.name().substring(0, slash + 1)
                  + "_rels/"
                  + part.name().substring(slash + 1)
                  + ".rels")
          .ifPresent(found::add);
      Relations relations = new Relations(archive, part.name());
      for (Relations.Relation relation : relations.all()) {
        Optional<Part> target = relations.part(relation);
        if (target.isPresent() && OWN.contains(relation.kind())) {
          open.add(target.get());
        }
      }
    }
    return found;
  }
}
