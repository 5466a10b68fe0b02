package washbook.office.generate;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import washbook.functions.XmlText;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/**
 * Writes the library of macros through which the menu starts its commands. Where Java is off or
 * missing the office ends a command of ours without a word; Basic runs without Java and can say so.
 */
final class BasicWriter {
  static final String LIBRARY = "Washbook";
  static final String MODULE = "Start";

  private static final String LIBRARY_XML =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
      <library:library xmlns:library="http://openoffice.org/2000/library" \
      library:name="%s" library:readonly="true" library:passwordprotected="false">%s</library:library>
      """;

  private static final String MODULE_XML =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
      <script:module xmlns:script="http://openoffice.org/2000/script" \
      script:name="%s" script:language="StarBasic">%s</script:module>
      """;

  /** The component of the functions stands for all that is written in Java. */
  private static final String CODE =
      """
      Option Explicit

      %s
      Sub StartCommand(command As String)
        Dim failure As String
        Dim dispatcher As Object
        failure = Trouble()
        If failure <> "" Then
          MsgBox JavaIsMissing(OfficeLocale()) & Chr(10) & Chr(10) & failure, 48, "Washbook"
        Else
          dispatcher = CreateUnoService("com.sun.star.frame.DispatchHelper")
          dispatcher.executeDispatch(ThisComponent.CurrentController.Frame, _
            "washbook.office:" & command, "_self", 0, Array())
        End If
      End Sub

      Function Trouble() As String
        Dim component As Object
        On Error Goto Failed
        component = CreateUnoService("WASHBOOK")
        If IsNull(component) Then Trouble = "WASHBOOK"
        Exit Function
      Failed:
        Trouble = Error$
      End Function

      Function OfficeLocale() As String
        Dim node(0) As New com.sun.star.beans.PropertyValue
        Dim provider As Object
        On Error Goto Unknown
        node(0).Name = "nodepath"
        node(0).Value = "/org.openoffice.Setup/L10N"
        provider = CreateUnoService("com.sun.star.configuration.ConfigurationProvider")
        OfficeLocale = provider.createInstanceWithArguments( _
          "com.sun.star.configuration.ConfigurationAccess", node()).getByName("ooLocale")
        Exit Function
      Unknown:
        OfficeLocale = ""
      End Function

      Function JavaIsMissing(locale As String) As String
        Select Case LCase(Left(locale, 2))
      %s    Case Else
            JavaIsMissing = %s
        End Select
      End Function
      """;

  private BasicWriter() {}

  static String library() {
    return LIBRARY_XML.formatted(LIBRARY, "<library:element library:name=\"" + MODULE + "\"/>");
  }

  /** The library has no dialogs, but without this file the office complains at each start. */
  static String dialogs() {
    return LIBRARY_XML.formatted(LIBRARY, "");
  }

  static String module() {
    String starts =
        MenuWriter.ENTRIES.stream().map(BasicWriter::start).collect(Collectors.joining("\n"));
    String cases =
        Arrays.stream(Language.values())
            .filter(language -> language != Language.EN)
            .map(BasicWriter::words)
            .collect(Collectors.joining());
    String code = CODE.formatted(starts, cases, javaIsMissing(Language.EN));
    return MODULE_XML.formatted(MODULE, XmlText.escaped(code));
  }

  /** Where a menu entry finds its macro. */
  static String urlOf(String command) {
    return "vnd.sun.star.script:"
        + String.join(".", List.of(LIBRARY, MODULE, macro(command)))
        + "?language=Basic&location=application";
  }

  private static String macro(String command) {
    return "Start" + Character.toUpperCase(command.charAt(0)) + command.substring(1);
  }

  private static String start(String command) {
    return """
        Sub %s
          StartCommand("%s")
        End Sub
        """
        .formatted(macro(command), command);
  }

  private static String words(Language language) {
    return """
            Case "%s"
              JavaIsMissing = %s
        """
        .formatted(language.code(), javaIsMissing(language));
  }

  private static String javaIsMissing(Language language) {
    return '"' + OfficeText.of("java.missing").in(language).replace("\"", "\"\"") + '"';
  }
}
