package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.arcwright.format.Schema;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SchemaCommandTest {
  @ParameterizedTest
  @EnumSource
  void prints_what_the_jar_publishes(Schema schema) {
    assertThat(Run.of("schema", schema.word())).isEqualTo(new Run(Exit.DONE, schema.text(), ""));
  }
}
