package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.arcwright.brief.Brief;
import org.arcwright.examples.Batch.Tally;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;

class BatchTest {
  @Test
  void answers_each_brief_and_most_with_a_proof() {
    List<Brief> briefs = Batch.briefs(BuiltIn.catalog(), 60, 7);

    Tally tally = Batch.compose(BuiltIn.catalog(), briefs);

    assertThat(tally.proven() + tally.nothing() + tally.unproven()).isEqualTo(60);
    assertThat(tally.proven()).isGreaterThan(40);
  }

  @Test
  void draws_the_same_briefs_from_the_same_seed() {
    assertThat(Batch.briefs(BuiltIn.catalog(), 5, 3))
        .isEqualTo(Batch.briefs(BuiltIn.catalog(), 5, 3))
        .isNotEqualTo(Batch.briefs(BuiltIn.catalog(), 5, 4));
  }
}
