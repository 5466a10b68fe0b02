package washbook.office;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.HttpServer;
import com.sun.star.deployment.UpdateInformationProvider;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.xml.dom.XElement;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.office.generate.Generate;
import washbook.office.testing.Office;

/** An office finds a newer version in the folder that a version was packed for. */
class UpdateIT {
  @TempDir Path directory;

  @Test
  void aNewerVersionIsFoundWhereItIsHosted() throws Exception {
    HttpServer host =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    Path hosted = directory.resolve("hosted-99.0");
    host.createContext(
        "/washbook/",
        exchange -> {
          Path file = hosted.resolve(Path.of(exchange.getRequestURI().getPath()).getFileName());
          byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
          exchange.sendResponseHeaders(bytes.length == 0 ? 404 : 200, bytes.length);
          exchange.getResponseBody().write(bytes);
          exchange.close();
        });
    host.start();
    String place = "127.0.0.1:" + host.getAddress().getPort() + "/washbook";
    Path profile = Office.freshProfile();
    try {
      // Offices from 26.8 on take no address of another kind from a description.
      Path packed = packed("https://" + place);
      generate("99.0", "https://" + place);
      try (Office office = Office.on(profile)) {
        office.extensions().add(packed);
        String[] named = office.extensions().installed().orElseThrow().getUpdateInformationURLs();
        assertArrayEquals(new String[] {"https://" + place + "/washbook.update.xml"}, named);
        XElement[] found =
            UpdateInformationProvider.create(office.context())
                .getUpdateInformation(
                    new String[] {"http://" + place + "/washbook.update.xml"}, "washbook.office");
        assertEquals(1, found.length);
        assertEquals("99.0", of(found[0], "version").getAttribute("value"));
        assertEquals(
            "https://" + place + "/washbook-99.0.oxt",
            of(found[0], "src").getAttributeNS("http://www.w3.org/1999/xlink", "href"));
      }
    } finally {
      host.stop(0);
      Office.delete(profile);
    }
  }

  private static XElement of(XElement in, String name) {
    return UnoRuntime.queryInterface(XElement.class, in.getElementsByTagName(name).item(0));
  }

  /** Ours, but with the description of one that was packed for that folder. */
  private Path packed(String address) throws Exception {
    Path packed = directory.resolve("washbook.oxt");
    Files.copy(SharedOffice.extension(), packed);
    Path description = generate("0.1.0", address).resolve("description.xml");
    try (FileSystem zip = FileSystems.newFileSystem(packed, Map.of())) {
      Files.copy(description, zip.getPath("description.xml"), StandardCopyOption.REPLACE_EXISTING);
    }
    return packed;
  }

  /** The folder with the extension's own files; what is hosted stands beside it. */
  private Path generate(String version, String address) throws Exception {
    Path extension = directory.resolve("extension-" + version);
    Generate.main(
        new String[] {
          directory.resolve("sources").toString(),
          extension.toString(),
          version,
          directory.resolve("hosted-" + version).toString(),
          address
        });
    return extension;
  }
}
