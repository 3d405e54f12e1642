package org.arcwright.examples.bench;

import org.arcwright.library.BuiltIn;

/** Loads the built-in catalog, or does nothing, so that the one can be set against the other. */
public final class LoadCatalog {
  private LoadCatalog() {}

  /** Loads it if there is any argument, and says how many exercises there are. */
  public static void main(String[] args) {
    System.out.println(args.length == 0 ? 0 : BuiltIn.catalog().exercises().size());
  }
}
