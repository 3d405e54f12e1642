package org.arcwright.gaps;

/**
 * How many different agendas one brief has.
 *
 * @param cell the brief
 * @param agendas how many were found, 0 up to as many as were looked for
 * @param counted whether the search was done; else there may be more
 */
public record Count(Cell cell, int agendas, boolean counted) {}
