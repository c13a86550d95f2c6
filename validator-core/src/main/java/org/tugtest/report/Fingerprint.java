package org.tugtest.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.tugtest.finding.Finding;

/**
 * Short names of findings for tools that track them from run to run: they follow what a finding is
 * about and never move with its line. The n-th finding of the same identity ends in {@code :n}.
 */
public final class Fingerprint {
  private static final int BYTES = 8;

  private final Map<String, Integer> seen = new HashMap<>();

  /** The name of the next finding, among all that were asked for before. */
  public String of(Finding finding) {
    return of("", finding);
  }

  /** The same for a finding that is told from others by the root that has it. */
  public String of(String root, Finding finding) {
    String hash = hash(root.isEmpty() ? finding.identity() : root + "\n" + finding.identity());
    return hash + ":" + seen.merge(hash, 1, Integer::sum);
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(PrintableText.wellFormed(text).getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, BYTES);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java platform has SHA-256", missing);
    }
  }
}
