package washbook.runner.read;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;

/** The relationships of one part of a package (ECMA-376-2:2021, 6.5). */
final class Relations {
  /**
   * One relationship.
   *
   * @param kind what stands behind the last "/" of its type, the same in Transitional and Strict
   */
  record Relation(String id, String kind, String target) {}

  private final Archive archive;
  private final List<Relation> relations = new ArrayList<>();

  /** Of the part of that name; of the package itself when it is "". */
  Relations(Archive archive, String partName) throws IOException {
    this.archive = archive;
    int slash = partName.lastIndexOf('/');
    String folder = partName.substring(0, slash + 1);
    String name = folder + "_rels/" + partName.substring(slash + 1) + ".rels";
    Optional<Part> part = archive.find(name);
    if (part.isPresent()) {
      SmallXml.read(
          archive,
          part.get(),
          at -> {
            if (at.name().equals("Relationship")
                && !at.attribute("TargetMode").equals("External")) {
              String type = at.attribute("Type");
              relations.add(
                  new Relation(
                      at.attribute("Id"),
                      type.substring(type.lastIndexOf('/') + 1),
                      resolve(folder, at.attribute("Target"))));
            }
          });
    }
  }

  private static String resolve(String folder, String target) {
    String path = target.replace('\\', '/');
    Deque<String> steps = new ArrayDeque<>();
    for (String step : (path.startsWith("/") ? path : folder + path).split("/", -1)) {
      if (step.equals("..")) {
        steps.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        steps.addLast(step);
      }
    }
    return String.join("/", steps);
  }

  List<Relation> all() {
    return List.copyOf(relations);
  }

  Optional<Relation> byId(String id) {
    return relations.stream().filter(relation -> relation.id().equals(id)).findFirst();
  }

  Optional<Relation> byKind(String kind) {
    return relations.stream().filter(relation -> relation.kind().equals(kind)).findFirst();
  }

  /** The part of the first relationship of that kind. */
  Optional<Part> partByKind(String kind) {
    return byKind(kind).flatMap(this::part);
  }

  Optional<Part> part(Relation relation) {
    Optional<Part> plain = archive.find(relation.target());
    if (plain.isPresent() || !relation.target().contains("%")) {
      return plain;
    }
    try {
      String name = relation.target().replace("+", "%2B");
      return archive.find(URLDecoder.decode(name, StandardCharsets.UTF_8));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
