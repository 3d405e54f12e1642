/** The command line, and the documents it writes. */
module org.arcwright.cli {
  requires freemarker;
  requires info.picocli;
  requires net.sf.biweekly;
  requires org.apache.commons.csv;
  requires org.apache.commons.text;
  requires transitive org.arcwright.core;
  requires org.arcwright.library;
  requires org.jline;
  requires static org.jspecify;

  exports org.arcwright.cli;
  exports org.arcwright.cli.document;
  exports org.arcwright.cli.handout;
  exports org.arcwright.cli.page;
  exports org.arcwright.cli.picture;
  exports org.arcwright.cli.words;

  opens org.arcwright.cli to
      info.picocli;
}
