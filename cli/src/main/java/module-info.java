/** The command line, and the documents it writes. */
module org.arcwright.cli {
  requires info.picocli;
  requires org.apache.commons.csv;
  requires org.apache.commons.text;
  requires transitive org.arcwright.core;
  requires org.arcwright.library;
  requires static org.jspecify;

  exports org.arcwright.cli;
  exports org.arcwright.cli.document;

  opens org.arcwright.cli to
      info.picocli;
}
