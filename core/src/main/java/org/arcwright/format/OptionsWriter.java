package org.arcwright.format;

import org.arcwright.compose.Options;
import org.arcwright.compose.Options.Found;
import org.arcwright.compose.Options.NotOne;
import org.arcwright.compose.Options.Option;
import org.arcwright.compose.Profile;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.format.OptionsReader.EndWord;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;

/** Writes options as {@link OptionsReader} reads them. */
final class OptionsWriter {
  private OptionsWriter() {}

  static Node tree(Options options) {
    Branch branch = Header.OPTIONS.begin().put("rule", tree(options.rule()));
    if (options instanceof Found found) {
      branch.put("end", EndWord.valueOf(found.end().name()).word());
      found.beyond().ifPresent(proof -> branch.put("beyond", ProofForm.tree(proof)));
      branch
          .put("options", Branch.list(found.options(), OptionsWriter::tree))
          .put("leftOut", Branch.list(found.best().leftOut(), CompositionWriter::tree))
          .put("instance", InstanceFormat.tree(found.best().instance()));
    } else if (options instanceof NotOne none) {
      branch.put("answer", CompositionWriter.tree(none.why()));
    }
    return branch.end();
  }

  private static Node tree(OptionRule rule) {
    return new Branch()
        .put("options", rule.count())
        .put("share", rule.share())
        .put("within", rule.within())
        .end();
  }

  private static Node tree(Option option) {
    return new Branch()
        .put("agenda", AgendaWriter.tree(option.composed().agenda()).end())
        .put("proof", ProofForm.tree(option.composed().proof()))
        .put("prices", Branch.list(option.composed().prices(), CompositionWriter::tree))
        .put("profile", tree(option.profile()))
        .end();
  }

  private static Node tree(Profile profile) {
    Branch formats = new Branch();
    profile.formats().forEach((format, count) -> formats.put(format.word(), count));
    return new Branch()
        .put("work", profile.work().toMinutes())
        .put("breaks", profile.breaks())
        .put("resting", profile.resting().toMinutes())
        .put("energyFit", profile.energyFit())
        .put("formats", formats.end())
        .put("talking", profile.talking().toMinutes())
        .put("alone", profile.alone().toMinutes())
        .put("openness", profile.openness())
        .put("tools", profile.tools())
        .end();
  }
}
