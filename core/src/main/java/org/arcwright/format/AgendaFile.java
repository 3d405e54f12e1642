package org.arcwright.format;

import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;

/**
 * What a file with an agenda holds.
 *
 * @param brief what the agenda was composed for, if the file carries it; one written by hand need
 *     not
 */
public record AgendaFile(Agenda agenda, Optional<Brief> brief) {}
