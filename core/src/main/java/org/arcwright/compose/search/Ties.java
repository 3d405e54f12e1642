package org.arcwright.compose.search;

import java.nio.charset.StandardCharsets;

/**
 * The hash of one item, by which equal costs are told apart: 32-bit FNV-1a (Fowler, Noll and Vo) of
 * the UTF-8 text {@code id/phase/start/length}. The part before the start is hashed once for each
 * candidate and phase.
 */
final class Ties {
  private static final int BASIS = 0x811C9DC5;
  private static final int PRIME = 0x01000193;

  private Ties() {}

  /** Hash of {@code id/phase/}. */
  static int prefix(String id, int phase) {
    int hash = BASIS;
    for (byte b : id.getBytes(StandardCharsets.UTF_8)) {
      hash = step(hash, b);
    }
    hash = step(hash, '/');
    hash = digits(hash, phase);
    return step(hash, '/');
  }

  /** Hash of {@code break//}. */
  static int breakPrefix() {
    int hash = BASIS;
    for (byte b : "break//".getBytes(StandardCharsets.US_ASCII)) {
      hash = step(hash, b);
    }
    return hash;
  }

  /** The whole item's hash, unsigned. */
  static long item(int prefix, int start, int length) {
    int hash = digits(prefix, start);
    hash = step(hash, '/');
    return Integer.toUnsignedLong(digits(hash, length));
  }

  private static int digits(int hash, int number) {
    return step(number < 10 ? hash : digits(hash, number / 10), '0' + number % 10);
  }

  private static int step(int hash, int octet) {
    return (hash ^ (octet & 0xFF)) * PRIME;
  }
}
