/**
 * What a person reads: an agenda as text for a terminal and as Markdown to send on, with its
 * picture and with why it is built so. Documents are drawn from the answer alone; nothing here
 * reads a file, a clock or the environment.
 */
@NullMarked
package org.arcwright.cli.document;

import org.jspecify.annotations.NullMarked;
