package org.arcwright.compose.explain;

import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;

/**
 * A change to the brief that lets an agenda be made.
 *
 * @param loosenings what it gives up; several where no single one is enough
 * @param least whether it is proven that none of them could be any smaller; a smaller step in one
 *     of them, all else as it stands here, lets no agenda be made
 * @param givesUp how much that is, in minutes of everybody's time that would be as dear
 * @param brief what the brief would be then, the catalog without the rules that are given up
 * @param agenda what follows
 * @param best whether it is proven that no agenda for that brief is better
 */
public record WayOut(
    List<Loosening> loosenings,
    boolean least,
    int givesUp,
    Brief brief,
    Agenda agenda,
    boolean best) {
  /** Copies the list. */
  public WayOut {
    loosenings = List.copyOf(loosenings);
  }
}
