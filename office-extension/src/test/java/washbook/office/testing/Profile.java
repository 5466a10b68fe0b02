package washbook.office.testing;

import java.nio.file.Path;

/** Installs an extension in an office's profile, as whoever runs it; unopkg refuses root. */
public final class Profile {
  private Profile() {}

  /** Arguments: the profile's folder, the packed extension. */
  public static void main(String[] arguments) {
    try (Office office = Office.on(Path.of(arguments[0]))) {
      office.extensions().add(Path.of(arguments[1]));
    }
  }
}
