/**
 * The exact search: an instance in, a proven cheapest solution out. It knows only the instance; no
 * trade word, no clock, no input or output.
 *
 * <p>An agenda is a path, an exercise a vertex visited at most once, and time, break rhythm, phase
 * minutes and work products are resources: an elementary shortest path with resource constraints
 * (Feillet, Dejax, Gendreau and Gueguen 2004). A search goes from coarse to fine, and each step
 * makes the next one small:
 *
 * <ol>
 *   <li>{@code Facts} turns the instance into cells, numbers and bits, and drops what cannot be
 *       used. Wishes become products that one exercise alone yields. {@code ModelBuilder} groups
 *       what is alike.
 *   <li>{@code Scout} finds a first agenda, mostly, before anything is bounded (limited discrepancy
 *       search, Harvey and Ginsberg 1995).
 *   <li>{@code Outline} forgets that no exercise comes twice, and formats and products too: a
 *       relaxation of the state space (Christofides, Mingozzi and Toth 1981), solved backward over
 *       time in one cheap pass.
 *   <li>{@code Dive}, a narrow beam along the outline, finds a better one: a ceiling.
 *   <li>{@code Corridor} goes forward over the outline and leaves out each state that no agenda
 *       under the ceiling passes, for its least price from the start and to the end are known:
 *       bounding from both sides (Righini and Salani 2006).
 *   <li>{@code Bound} goes backward over what is left, now with formats and products.
 *   <li>{@code LabelSetting} goes on in the order of least estimate (A*, Hart, Nilsson and Raphael
 *       1968) with dominance, and enforces "not twice" only for the exercises that a cheapest path
 *       would repeat (decremental state-space relaxation, Righini and Salani 2008; Boland,
 *       Dethridge and Dumitrescu 2006).
 *   <li>{@code OptionSearch} charges tolls on exercises of earlier agendas and on those that a
 *       cheapest path would repeat, and gives them back for as many as may come (Lagrangian
 *       relaxation, Geoffrion 1974). {@code Ascent} moves the tolls so that the bound rises (Held,
 *       Wolfe and Crowder 1974).
 * </ol>
 *
 * <p>Where any agenda will do, as in explanations, {@code AnyAgenda} goes depth first over the same
 * model, and {@code Finishable} tells from where a day can still be ended.
 *
 * <p>The cost of an agenda and the tie that tells equal costs apart are one long, see {@code
 * Model}.
 */
@NullMarked
package org.arcwright.compose.search;

import org.jspecify.annotations.NullMarked;
