package org.arcwright.compose.check;

import java.nio.charset.StandardCharsets;

/**
 * FNV-1a with 32 bits (Fowler, Noll, Vo, Eastlake and Hansen: The FNV Non-Cryptographic Hash
 * Algorithm, RFC 9923).
 */
final class Fnv {
  private static final int OFFSET_BASIS = 0x811C9DC5;
  private static final int PRIME = 0x01000193;

  private Fnv() {}

  /** The hash of the UTF-8 text, from 0 to 2³² − 1. */
  static long hash(String text) {
    int hash = OFFSET_BASIS;
    for (byte octet : text.getBytes(StandardCharsets.UTF_8)) {
      hash = (hash ^ (octet & 0xFF)) * PRIME;
    }
    return Integer.toUnsignedLong(hash);
  }
}
