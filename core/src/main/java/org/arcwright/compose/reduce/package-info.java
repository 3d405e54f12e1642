/**
 * From a brief and a catalog to an instance, and back from its items to an agenda. All judgement
 * about the trade that is not data lives here, every figure of it in {@link
 * org.arcwright.compose.reduce.ExchangeRates}.
 */
@NullMarked
package org.arcwright.compose.reduce;

import org.jspecify.annotations.NullMarked;
