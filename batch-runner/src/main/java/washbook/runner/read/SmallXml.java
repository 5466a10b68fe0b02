package washbook.runner.read;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;

/** Reads the small parts of a package with the JDK's parser; document types are refused. */
final class SmallXml {
  /** Larger ones are refused. */
  private static final int LIMIT = 32 << 20;

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
    try {
      XMLStreamReader reader =
          FACTORY.createXMLStreamReader(new StringReader(characters(archive, part)));
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
      throw new UnusableFileException("The file is damaged: " + part.name() + " is no XML.", e);
    }
  }

  /** The part's characters; the JDK's parser would report broken bytes on standard error. */
  private static String characters(Archive archive, Part part) throws IOException {
    byte[] bytes = archive.bytes(part, LIMIT);
    boolean wide =
        bytes.length >= 2
            && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
                || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
    Charset charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    try {
      String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new UnusableFileException(
          "The file is damaged: " + part.name() + " has broken characters.", e);
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
