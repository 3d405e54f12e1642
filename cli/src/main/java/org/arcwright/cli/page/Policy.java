package org.arcwright.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/**
 * What a page lets the browser do, as Content Security Policy Level 3 (W3C) writes it: apply
 * exactly these style sheets, run exactly this script, show pictures and letters that stand in the
 * page itself, and nothing else.
 */
final class Policy {
  private Policy() {}

  static String of(List<String> styles, String script) {
    StringBuilder policy = new StringBuilder("default-src 'none'; style-src");
    styles.forEach(style -> policy.append(' ').append(seal(style)));
    if (!script.isEmpty()) {
      policy.append("; script-src ").append(seal(script));
    }
    return policy + "; img-src data:; font-src data:; base-uri 'none'; form-action 'none'";
  }

  private static String seal(String text) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
