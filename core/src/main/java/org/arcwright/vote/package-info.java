/**
 * The arithmetic of group decisions: multivoting, ranked points, places and pairs, approval,
 * majority, consent, and matrices of criteria. Each method is a record of what was cast, checked in
 * its constructor; its methods count, exactly and in whole numbers or fractions, and give every sum
 * with its parts. Where the method says nothing about a tie, the outcome is a tie: who breaks it is
 * for the people in the workshop to say beforehand.
 */
@NullMarked
package org.arcwright.vote;

import org.jspecify.annotations.NullMarked;
