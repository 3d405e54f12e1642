package org.arcwright.format;

import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.standin.ToolVerdict;

/**
 * What a file with an agenda holds.
 *
 * @param brief what the agenda was composed for, if the file carries it; one written by hand need
 *     not
 * @param withstands whether it goes on when a tool fails, if it was composed for that
 */
public record AgendaFile(Agenda agenda, Optional<Brief> brief, Optional<ToolVerdict> withstands) {
  /** One that was composed for no failing tool. */
  public AgendaFile(Agenda agenda, Optional<Brief> brief) {
    this(agenda, brief, Optional.empty());
  }
}
