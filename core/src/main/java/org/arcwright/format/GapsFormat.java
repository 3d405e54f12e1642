package org.arcwright.format;

import java.time.Duration;
import java.util.Collection;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;
import org.arcwright.gaps.Count;
import org.arcwright.gaps.Demand;
import org.arcwright.gaps.Draft;
import org.arcwright.gaps.Gap;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.ToolSet;

/** Where a shelf is thin, in JSON for other programs. */
public final class GapsFormat {
  private GapsFormat() {}

  /** Every brief with its number of agendas, the gaps, and what they ask for. */
  public static String write(Gaps gaps) {
    return JsonWriter.write(
        new Branch()
            .put("briefs", gaps.grid().size())
            .put("most", gaps.most())
            .put("counts", Branch.list(gaps.counts(), GapsFormat::count))
            .put("gaps", Branch.list(gaps.gaps(), GapsFormat::gap))
            .put("demands", Branch.list(gaps.demands(), GapsFormat::demand))
            .end());
  }

  private static Node count(Count count) {
    return with(new Branch().put("goal", count.cell().goal()), count.cell().tools())
        .put("people", count.cell().people())
        .put("minutes", count.cell().length().toMinutes())
        .put("agendas", count.agendas())
        .put("counted", count.counted())
        .end();
  }

  private static Node gap(Gap gap) {
    return with(new Branch().put("goal", gap.goal()), gap.tools())
        .put("people", gap.people())
        .put("minutes", minutes(gap.lengths()))
        .put("agendas", gap.agendas())
        .put("missing", Branch.list(gap.drafts(), GapsFormat::draft))
        .end();
  }

  private static Branch with(Branch branch, ToolSet set) {
    return branch
        .put("mode", set.mode().word())
        .put("toolSet", set.name())
        .putSome("tools", set.tools());
  }

  private static Node draft(Draft draft) {
    return new Branch()
        .put("phase", draft.phase())
        .put("kind", draft.kind().word())
        .put("needs", draft.needs())
        .put("yields", draft.yields())
        .put("minutesAtMost", draft.atMost().toMinutes())
        .end();
  }

  private static Node demand(Demand demand) {
    return new Branch()
        .put("kind", demand.kind().word())
        .put("yields", demand.yields())
        .put("briefs", demand.briefs())
        .put("peopleMin", demand.people().min())
        .put("peopleMax", demand.people().max())
        .put("minutesAtMost", demand.atMost().toMinutes())
        .end();
  }

  private static Node minutes(Collection<Duration> lengths) {
    return Branch.list(lengths, length -> Branch.number(length.toMinutes()));
  }
}
