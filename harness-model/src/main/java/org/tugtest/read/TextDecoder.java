package org.tugtest.read;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/** From the bytes of a file to its text, or why they are none. */
final class TextDecoder {
  private static final char MARK = '\uFEFF';
  private static final char REPLACEMENT = '\uFFFD';
  private static final String POINTER_FILE = "version https://git-lfs";

  private TextDecoder() {}

  /** What came of it: a text, or a trouble. */
  record Decoded(@Nullable SourceText source, @Nullable Trouble trouble) {}

  /**
   * Why a file cannot be used.
   *
   * @param message goes on after the path
   */
  record Trouble(String message, String remedy, Place at) {}

  static Decoded decode(String path, SourceFiles.Content content, ReadLimits limits) {
    if (content instanceof SourceFiles.Content.Refused refused) {
      return trouble(path, refused.message(), refused.remedy());
    }
    byte[] bytes = ((SourceFiles.Content.Bytes) content).bytes();
    if (bytes.length > limits.bytes()) {
      return trouble(
          path,
          "is "
              + megabytes(bytes.length)
              + " long; files up to "
              + megabytes(limits.bytes())
              + " are read",
          "Split it, and name the pieces under \"uses\".");
    }
    String wide = wide(bytes);
    if (!wide.isEmpty()) {
      return trouble(path, "is " + wide + ", not UTF-8", "Save it as UTF-8.");
    }
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (text.indexOf(REPLACEMENT) >= 0) {
      Trouble trouble = malformed(path, bytes);
      if (trouble != null) {
        return new Decoded(null, trouble);
      }
    }
    if (text.startsWith(POINTER_FILE)) {
      return trouble(
          path,
          "holds only a pointer to a file kept in large-file storage",
          "Fetch the content with \"git lfs pull\", or keep this file in git itself.");
    }
    boolean marked = !text.isEmpty() && text.charAt(0) == MARK;
    return new Decoded(SourceText.of(path, marked ? text.substring(1) : text), null);
  }

  /**
   * The encoding of more than one byte for each letter that a file begins in, told by its mark, or
   * without one by the zero bytes beside its first letters, which in JSON are ASCII; else empty.
   */
  private static String wide(byte[] bytes) {
    if (begins(bytes, 0xFF, 0xFE, 0, 0) || begins(bytes, 0, 0, 0xFE, 0xFF)) {
      return "UTF-32";
    }
    if (begins(bytes, 0xFF, 0xFE) || begins(bytes, 0xFE, 0xFF)) {
      return "UTF-16";
    }
    StringBuilder zeros = new StringBuilder();
    for (int i = 0; i < Math.min(4, bytes.length); i++) {
      zeros.append(bytes[i] == 0 ? '0' : 'x');
    }
    return switch (zeros.toString()) {
      case "x0x0", "0x0x" -> "UTF-16";
      case "x000", "000x" -> "UTF-32";
      default -> "";
    };
  }

  private static boolean begins(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static String megabytes(long bytes) {
    return bytes < 1 << 20
        ? bytes + " bytes"
        : String.format(Locale.ROOT, "%.1f MiB", bytes / 1048576.0);
  }

  private static Decoded trouble(String path, String message, String remedy) {
    return new Decoded(null, new Trouble(message, remedy, Place.point(path, 1, 1, "")));
  }

  /** The first byte that is no UTF-8; null when the text itself holds replacement characters. */
  private static @Nullable Trouble malformed(String path, byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer input = ByteBuffer.wrap(bytes);
    CharBuffer sink = CharBuffer.allocate(8192);
    CoderResult result = decoder.decode(input, sink, true);
    while (result.isOverflow()) {
      sink.clear();
      result = decoder.decode(input, sink, true);
    }
    if (!result.isError()) {
      return null;
    }
    int bad = input.position();
    String before = new String(bytes, 0, bad, StandardCharsets.UTF_8);
    int mark = !before.isEmpty() && before.charAt(0) == MARK ? 1 : 0;
    SourceText source = SourceText.of(path, before.substring(mark));
    int offset = before.length() - mark;
    return new Trouble(
        String.format(
            Locale.ROOT,
            "is not UTF-8: the byte %02X at line %d, column %d is no character",
            bytes[bad] & 0xFF,
            source.lineAt(offset),
            source.columnAt(offset)),
        "Save the file as UTF-8.",
        Place.point(path, source.lineAt(offset), source.columnAt(offset), ""));
  }
}
