package org.arcwright.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.CatalogFormat;

/** The built-in catalog. */
public final class BuiltIn {
  private static final String RESOURCE = "catalog.bin";

  private BuiltIn() {}

  /** The catalog: exercises, goals and their words. It is read when it is first asked for. */
  public static Catalog catalog() {
    return Holder.CATALOG;
  }

  private static final class Holder {
    static final Catalog CATALOG = load();

    private static Catalog load() {
      try (InputStream in = BuiltIn.class.getResourceAsStream(RESOURCE)) {
        if (in == null) {
          throw new IllegalStateException(RESOURCE + " is missing from the library's jar");
        }
        return CatalogFormat.readCompiled(in);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
