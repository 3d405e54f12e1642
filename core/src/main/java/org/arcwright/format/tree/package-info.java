/**
 * Files as trees: text in, nodes with their places out, and back. It knows YAML and JSON, keys and
 * kinds of value, and nothing of what they mean; whoever reads a tree collects {@link
 * org.arcwright.format.tree.Faults}, so that one reading finds every fault of a file.
 */
@NullMarked
package org.arcwright.format.tree;

import org.jspecify.annotations.NullMarked;
