/**
 * Reading and writing the files of the house. Whatever is wrong with a file is told as {@code
 * file:line:column: what, value: what would be right}, all of it at once, in a {@link
 * org.arcwright.format.FormatException}.
 *
 * <ul>
 *   <li>{@link org.arcwright.format.CatalogFormat}: exercises, goals, work products and tools, in
 *       YAML for those who curate them, and a whole catalog as one JSON document;
 *   <li>{@link org.arcwright.format.TableFormat}: exercises as rows of cells, for spreadsheets;
 *   <li>{@link org.arcwright.format.BriefFormat}: briefs, in YAML or JSON;
 *   <li>{@link org.arcwright.format.AgendaFormat}: agendas, in JSON;
 *   <li>{@link org.arcwright.format.CompositionFormat} and {@link
 *       org.arcwright.format.ReviewFormat}: what a composer answers, and what it says of an agenda,
 *       in JSON;
 *   <li>{@link org.arcwright.format.OptionsFormat}, {@link org.arcwright.format.WhatIfFormat},
 *       {@link org.arcwright.format.ClashFormat}, {@link org.arcwright.format.WhyNotFormat} and
 *       {@link org.arcwright.format.WhyThisFormat}: options, what becomes of other figures, and
 *       explanations, in JSON;
 *   <li>{@link org.arcwright.format.ForecastFormat}: when an agenda will really end, in JSON;
 *   <li>{@link org.arcwright.format.LogFormat}: progress logs, a line of JSON for each entry;
 *   <li>{@link org.arcwright.format.RecordFormat}: what came of a workshop, in YAML or JSON;
 *   <li>{@link org.arcwright.format.InstanceFormat} and {@link
 *       org.arcwright.format.SolutionFormat}: the composition problem and its answer, in JSON, for
 *       other solvers, and {@link org.arcwright.format.VerdictFormat}: what a checker says of one;
 *   <li>{@link org.arcwright.format.ProblemsFormat}: what is wrong with a document, in JSON.
 * </ul>
 *
 * <p>{@link org.arcwright.format.Schema} has a JSON Schema for each kind of file, for editors. JSON
 * that programs exchange says in {@code format} what it is and in {@code version} which readers
 * understand it.
 *
 * <p>All files are UTF-8, with or without a byte order mark. YAML is YAML 1.2, one document,
 * indented with spaces, without aliases and tags.
 */
@NullMarked
package org.arcwright.format;

import org.jspecify.annotations.NullMarked;
