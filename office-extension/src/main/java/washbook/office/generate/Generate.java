package washbook.office.generate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import washbook.functions.catalogue.Catalogue;
import washbook.log.language.Language;
import washbook.office.help.HelpFile;

/**
 * Writes from the catalogue everything that the office wants to know about the functions: types,
 * wizard texts, interface and delegating class, and the description of the extension.
 */
public final class Generate {
  private Generate() {}

  /**
   * Takes the directory for sources, the directory for the extension's files, the version, the
   * directory for what is hosted beside it, and the address of that folder or none.
   */
  public static void main(String[] arguments) throws IOException {
    Path sources = Path.of(arguments[0]).resolve("washbook/office");
    Path extension = Path.of(arguments[1]);
    String version = arguments[2];
    String updates = arguments.length < 5 || arguments[4].equals("none") ? "" : arguments[4];
    List<Method> methods =
        Stream.concat(Catalogue.all().stream(), Stream.of(ColumnEntry.FUNCTION))
            .map(Method::new)
            .toList();
    write(sources.resolve("XWashbook.java"), JavaWriter.interfaceOf(methods));
    write(sources.resolve("WashbookFunctions.java"), JavaWriter.classOf(methods));
    write(extension.resolve("types.idl"), TypesWriter.typesOf(methods));
    write(extension.resolve("CalcAddIns.xcu"), WizardWriter.textsOf(methods));
    write(extension.resolve("Addons.xcu"), MenuWriter.menu());
    Path macros = extension.resolve(BasicWriter.LIBRARY);
    write(macros.resolve("script.xlb"), BasicWriter.library());
    write(macros.resolve("dialog.xlb"), BasicWriter.dialogs());
    write(macros.resolve(BasicWriter.MODULE + ".xba"), BasicWriter.module());
    write(extension.resolve("description.xml"), DescriptionWriter.description(version, updates));
    Path hosted = Path.of(arguments[3]);
    write(
        hosted.resolve(DescriptionWriter.UPDATE_FILE), UpdateWriter.information(version, updates));
    for (Language language : Language.values()) {
      write(
          extension.resolve(DescriptionWriter.file(language.code())),
          DescriptionWriter.text(language));
      write(extension.resolve(HelpFile.of(language)), new HelpWriter(language).page(version));
      write(
          hosted.resolve(UpdateWriter.notesFile(language.code())),
          UpdateWriter.notes(version, language));
    }
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
