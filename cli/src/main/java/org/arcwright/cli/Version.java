package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote down. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(Version.class.getResourceAsStream("version.txt"))) {
      return new String[] {"arcwright " + new String(in.readAllBytes(), UTF_8).strip()};
    }
  }
}
