package org.arcwright.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Texts that come with the program, such as our style sheet and the scripts of pages. */
public final class Resource {
  private Resource() {}

  /** The text of that name. */
  public static String text(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("built without " + name);
      }
      return new String(in.readAllBytes(), UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
