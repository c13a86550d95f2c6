package org.tugtest.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The style and the script that a page carries inside itself. Line ends are LF, as browsers hash.
 *
 * @param script empty: the page has none
 */
public record Assets(String style, String script) {

  static Assets load() {
    String style = shared() + read(Assets.class, "report.css") + rooms();
    return new Assets(style, wiring() + read(Assets.class, "report.js"));
  }

  /** The style of wire colours and connector faces, which stands before a page's own style. */
  public static String shared() {
    return read(Assets.class, "colours.css") + read(Assets.class, "faces.css");
  }

  /** The style of circuits and of the fuse map, which stands after a page's own style. */
  public static String rooms() {
    return read(Assets.class, "circuits.css");
  }

  /** The script that makes elements, which stands before a page's own script. */
  public static String elements() {
    return read(Assets.class, "elements.js");
  }

  /** The same with what hangs where and the search for it. */
  public static String wiring() {
    return elements() + read(Assets.class, "wiring.js");
  }

  /** The style with the words of the print margins added. */
  Assets withStyle(String more) {
    return new Assets(style + more, script);
  }

  /** A policy under which nothing is loaded, and only this style and this script take effect. */
  public String policy() {
    return "default-src 'none'; style-src "
        + hash(style)
        + "; script-src "
        + (script.isEmpty() ? "'none'" : hash(script))
        + "; base-uri 'none'; form-action 'none'";
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** A text that ships beside a class, with LF. */
  public static String read(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
