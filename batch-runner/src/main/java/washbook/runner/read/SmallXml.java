package washbook.runner.read;

import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;

/** Reads the small parts of a package with the JDK's parser; document types are refused. */
final class SmallXml {
  /** Larger ones are refused. */
  private static final int LIMIT = 128 << 20;

  private static final XMLInputFactory FACTORY = XMLInputFactory.newInstance();

  static {
    FACTORY.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    FACTORY.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    FACTORY.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
  }

  private SmallXml() {}

  /** Is told every start and end of an element. */
  interface Handler {
    void start(XMLStreamReader at) throws IOException;

    default void end(XMLStreamReader at) throws IOException {}
  }

  static void read(Archive archive, Part part, Handler handler) throws IOException {
    if (part.size() > LIMIT) {
      throw new UnusableFileException(part.name() + " is larger than any honest part of its kind.");
    }
    try (InputStream in = archive.read(part)) {
      XMLStreamReader reader = FACTORY.createXMLStreamReader(in);
      while (reader.hasNext()) {
        switch (reader.next()) {
          case XMLStreamConstants.DTD ->
              throw new UnusableFileException(
                  part.name() + " has a document type, which no workbook needs.");
          case XMLStreamConstants.START_ELEMENT -> handler.start(reader);
          case XMLStreamConstants.END_ELEMENT -> handler.end(reader);
          default -> {}
        }
      }
    } catch (XMLStreamException e) {
      if (e.getNestedException() instanceof IOException io
          && !(io instanceof CharConversionException)) {
        throw io;
      }
      throw new UnusableFileException("The file is damaged: " + part.name() + " is no XML.", e);
    }
  }

  /** The attribute of that local name in no or any namespace; "" when there is none. */
  static String attribute(XMLStreamReader at, String localName) {
    for (int i = 0; i < at.getAttributeCount(); i++) {
      if (at.getAttributeLocalName(i).equals(localName)) {
        return at.getAttributeValue(i);
      }
    }
    return "";
  }

  /** Whether the attribute says yes, in one of the ways of XML Schema. */
  static boolean isTrue(XMLStreamReader at, String localName) {
    String value = attribute(at, localName);
    return value.equals("1") || value.equals("true") || value.equals("on");
  }

  /** A whole number that is not negative, or -1. */
  static int count(String value) {
    try {
      return Math.max(-1, Integer.parseInt(value.strip()));
    } catch (NumberFormatException e) {
      return -1;
    }
  }
}
