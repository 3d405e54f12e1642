package org.arcwright.format;

import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.format.AgendaReader.BreakKind;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;

/** Writes an agenda as {@link AgendaReader} reads it. */
final class AgendaWriter {
  private AgendaWriter() {}

  static Branch tree(Agenda agenda) {
    Branch branch =
        Header.AGENDA
            .begin()
            .put("title", agenda.title())
            .put("goal", agenda.goal())
            .put("mode", agenda.mode().word())
            .put("people", agenda.people())
            .put("cap", Times.minutes(agenda.cap()));
    Times.putStart(branch, agenda.start());
    return branch
        .put("phases", Branch.list(agenda.phases(), AgendaWriter::tree))
        .put("items", Branch.list(agenda.items(), AgendaWriter::tree))
        .put("buffer", Times.minutes(agenda.buffer()))
        .put("curve", Branch.list(agenda.curve(), Levels::tree))
        .put("figures", FiguresForm.tree(agenda.figures()));
  }

  private static Node tree(Agenda.PhaseTitle phase) {
    return new Branch().put("name", phase.name()).put("title", phase.title()).end();
  }

  static Node tree(AgendaItem item) {
    Branch branch = new Branch();
    if (item instanceof Pause pause) {
      BreakKind kind = pause.meal() ? BreakKind.MEAL : BreakKind.ORDINARY;
      branch.put("break", kind.word());
    } else if (item instanceof Activity activity) {
      branch
          .put("exercise", activity.exercise())
          .put("title", activity.title())
          .put("kind", activity.kind().map(kind -> kind.word()))
          .put("phase", activity.phase());
    }
    branch.put("start", Times.minutes(item.start())).put("length", Times.minutes(item.length()));
    if (item instanceof Activity activity) {
      branch.put("format", activity.format().word()).put("energy", Levels.tree(activity.energy()));
    }
    return branch.end();
  }
}
