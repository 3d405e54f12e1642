/**
 * What trainers do with a shelf of exercises: choose from it, hold its files against good practice,
 * compare two exercises and find those that are alike.
 */
@NullMarked
package org.arcwright.shelf;

import org.jspecify.annotations.NullMarked;
